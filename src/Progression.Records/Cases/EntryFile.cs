using System.Collections.Immutable;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Records.Yaml;

namespace Progression.Records.Cases;

/// <summary>How every file that is entered into a case is opened, read and judged.</summary>
internal static class EntryFile
{
    /// <summary>Reads a file into a case.</summary>
    /// <param name="file">The file, on disk or not.</param>
    /// <param name="patient">The case as it stands.</param>
    /// <param name="against">The library whose ids the file may name, and the present day.</param>
    /// <param name="enter">Enters the fields; what is wrong goes to their problems, what is odd to the queries of the reading.</param>
    /// <returns>What was entered, null where anything was wrong; then what was wrong and what is asked back, in the order of the file.</returns>
    public static (T? Entered, ImmutableArray<FileProblem> Problems, ImmutableArray<FileProblem> Queries) Read<T>(
        WrittenFile file, Case patient, (ClinicalLibrary Library, DateOnly Today) against, Func<Fields, CaseReading, T> enter)
        where T : class
    {
        ArgumentNullException.ThrowIfNull(file);
        ArgumentNullException.ThrowIfNull(patient);
        ArgumentNullException.ThrowIfNull(against.Library);
        YamlDocument document = file.Document();
        if (document.Root is null)
        {
            return (null, [.. document.Problems], []);
        }

        FileProblems problems = new(file.Name);
        FileProblems queries = new(file.Name);
        T entered = enter(new Fields(document.Root, "", problems), new CaseReading(against.Library, against.Today, queries) { Operation = patient.Operation.Date });
        return (problems.Count == 0 ? entered : null, [.. problems.InOrder()], [.. queries.InOrder()]);
    }
}
