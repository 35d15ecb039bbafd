using System.Collections.Immutable;
using Progression.Core.Entry;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Records.Yaml;

namespace Progression.Records.Cases;

/// <summary>
/// Reads sessions, written as described by shared/schema/session.schema.json and shown in shared/examples/session.yaml, into the case they belong to. What is
/// known only later (pain the next morning, the skin) completes a session that was logged before.
/// </summary>
public static class SessionFileReader
{
    /// <summary>The only value of the field "schema"; another form gets another number.</summary>
    internal const string Schema = "session-file/1";

    /// <summary>Reads a file.</summary>
    /// <param name="path">The file as the person named it.</param>
    /// <param name="patient">The case as it stands.</param>
    /// <param name="library">The library whose exercises the file may name.</param>
    /// <param name="today">The present day.</param>
    public static SessionFileResult Read(string path, Case patient, ClinicalLibrary library, DateOnly today) =>
        Read(WrittenFile.At(path), patient, library, today);

    /// <summary>Reads a file, on disk or not.</summary>
    /// <param name="file">The file.</param>
    /// <param name="patient">As above.</param>
    /// <param name="library">As above.</param>
    /// <param name="today">As above.</param>
    public static SessionFileResult Read(WrittenFile file, Case patient, ClinicalLibrary library, DateOnly today)
    {
        (Case? entered, ImmutableArray<FileProblem> problems, ImmutableArray<FileProblem> queries) =
            EntryFile.Read(file, patient, (library, today), (fields, reading) => Enter(fields, patient, reading));
        IEnumerable<SessionLog> logged = entered?.Sessions.Except(patient.Sessions, ReferenceEqualityComparer.Instance).Cast<SessionLog>() ?? [];
        return new SessionFileResult(entered, [.. logged], problems, queries);
    }

    private static Case Enter(Fields fields, Case patient, CaseReading reading)
    {
        EntryHead.Read(fields, Schema, patient);
        Case entered = patient;
        foreach (Fields one in fields.Maps("sessions", Need.Optional))
        {
            if (SessionFields.One(one, reading) is { } session)
            {
                Ask(one, entered, session, reading);
                entered = entered.With(session);
            }
        }

        entered = fields.Maps("complete", Need.Optional).Aggregate(entered, (so, one) => SessionCompletion.Read(one, so, reading));
        fields.Done();
        if (!fields.Has("sessions") && !fields.Has("complete"))
        {
            fields.Problems.Add(fields.Line, new Problem("", "The file holds nothing that could be logged.", "sessions or complete", ""));
        }

        return entered;
    }

    /// <summary>Two like sessions on one day are possible; more likely one was entered twice.</summary>
    private static void Ask(Fields fields, Case so, SessionLog session, CaseReading reading)
    {
        string text = CaseJsonParts.Write(session).ToJsonString();
        if (so.Sessions.Any(one => one.Date == session.Date && CaseJsonParts.Write(one).ToJsonString() == text))
        {
            reading.Queries.Add(fields.Line, new Problem(
                fields.Path, "The very same session is logged for this day already; please check that it was done twice.", "a session that was not logged yet", DaySpan.Text(session.Date)));
        }
    }
}
