using System.Collections.Immutable;
using System.CommandLine;
using Progression.Core.Entry;
using Progression.Core.Forecasts;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Plans;
using Progression.Core.Reassessing;
using Progression.Records.Caseload;
using Progression.Records.Cases;

namespace Progression.App.Commands.Reassess;

/// <summary><c>progression reassess</c>: a visit from a file, what it changes, and a proposal for the coming weeks, taken or refused.</summary>
internal sealed class ReassessCommand(CommandOutput output, CliEnvironment environment, StorePlace stores, LibraryPlace libraries)
{
    private const string All = "all";
    private const string None = "none";
    private const int MostReason = 400;

    private readonly EntryInput _input = new(output, environment, stores);
    private readonly Option<string?> _accept = new("--accept") { Description = "Save the visit with the whole proposal (all) or with none of it (none). Left out: nothing is saved.", HelpName = "all|none" };
    private readonly Option<string?> _reason = new("--reason") { Description = "Why it was decided so; required with --accept none.", HelpName = "TEXT" };
    private readonly Option<string?> _weeks = new("--weeks") { Description = $"Weeks the plan is to have, up to {PostOpWeek.Longest}; not fewer than it has.", HelpName = "N" };
    private readonly Option<bool> _json = new("--json") { Description = "Print the answer as JSON." };

    internal Command Build()
    {
        _accept.AcceptOnlyFromAmong(All, None);
        ExampledCommand command = new("reassess", "Enters a visit into a saved case: what changed, what is expected, and what it proposes for the plan.", $"""
            Past weeks and cells set by hand stay as they are. To take single changes, open the plan in the workbook.

            Examples:
              progression example assessment > visit.yaml
              progression reassess EXAMPLE-07 --from visit.yaml
              progression reassess EXAMPLE-07 --from visit.yaml --accept all
              progression reassess EXAMPLE-07 --from visit.yaml --accept none --reason "skin is sore"

            JSON: schema "reassess/1" with code, assessment, flags, verdict, changes, forecasts, proposal and decision.
            {ExitCode.Help}
            """)
        { _input.Code, _input.From, _accept, _reason, _weeks, _input.Confirmed, _json, stores.Option, libraries.Option };
        command.SetAction(Run);
        return command;
    }

    private int Run(ParseResult line)
    {
        (ClinicalLibrary? library, int code) = libraries.Read("reassess", line);
        if (library is null)
        {
            return code;
        }

        GivenOptions given = new(line);
        (string? accept, string? reason, int? weeks) = (line.GetValue(_accept), line.GetValue(_reason), given.Count(_weeks, PostOpWeek.Longest));
        given.Problems.AddRange(OfReason(accept, reason));
        if (given.Problems.Count > 0)
        {
            output.Problems("reassess", given.Problems);
            return ExitCode.Usage;
        }

        (OpenedCase? opened, CaseBook? book, code) = _input.Open("reassess", line);
        return opened is null ? code
            : opened.Plan is not { } plan ? NoPlan(opened)
            : _input.File("reassess", line) is not { } file ? ExitCode.NoInput
            : Enter(line, AssessmentFileReader.Read(file, opened.Case, library, _input.Today), new Asked(opened, plan, book!, library) { Accept = accept, Reason = reason, Weeks = weeks });
    }

    private int Enter(ParseResult line, AssessmentFileResult read, Asked asked)
    {
        bool goesOn = asked.Accept is null ? Told(read) : _input.MayEnter("reassess", line, read.Problems, read.Queries);
        if (!goesOn)
        {
            return ExitCode.BadData;
        }

        Case patient = read.Case!;
        Reassessment found = Reassessment.Of(asked.Plan, patient, asked.Library, asked.Weeks);
        output.Problems("reassess", found.Proposal.Problems);
        PlanRevision? decided = asked.Accept is null ? null : Decide(found.Proposal.Value, asked);
        if (asked.Accept is not null && decided is null)
        {
            output.Message("progression reassess: nothing was saved.");
            return ExitCode.BadData;
        }

        int code = decided is null ? ExitCode.Good : Save(patient, decided, asked);
        if (code != ExitCode.Good)
        {
            return code;
        }

        ReassessAnswer answer = new(patient, asked.Plan, asked.Library, found, decided?.Decision);
        if (line.GetValue(_json))
        {
            output.Json(answer.Json());
        }
        else
        {
            output.Data(ReassessText.Of(answer));
        }

        return found.Flags.Any(flag => flag.IsOpen) ? ExitCode.SafetyStop : ExitCode.Good;
    }

    /// <summary>The plan as decided; null when there is no proposal to decide on.</summary>
    private static PlanRevision? Decide(Proposal? proposal, Asked asked) =>
        asked.Accept == All ? proposal?.AcceptAll(asked.Reason) : proposal?.Accept(ImmutableHashSet<CellAddress>.Empty, asked.Reason);

    /// <summary>The visit, the plan and the forecasts made from it are saved together or not at all.</summary>
    private int Save(Case patient, PlanRevision decided, Asked asked)
    {
        ImmutableArray<KeptForecast> forecasts = ForecastLedger.After(asked.Opened.Forecasts, patient, asked.Library, patient.Assessments[^1].Date);
        switch (asked.Book.SaveReassessment(patient, decided, forecasts, asked.Opened))
        {
            case SaveResult.Saved saved:
                output.Message($"Saved {patient.Code}, plan revision {saved.Plan.Revision}: {decided.Decision!.Taken} of {decided.Decision.Proposed} changes taken.");
                return ExitCode.Good;
            case SaveResult.NotSaved refused:
                output.Message($"progression reassess: not saved. {refused.Why}");
                return StorePlace.CodeOf(refused.Kind);
            default:
                throw new InvalidOperationException("A save has two outcomes.");
        }
    }

    /// <summary>Nothing will be saved, so what is asked back is only told.</summary>
    private bool Told(AssessmentFileResult read)
    {
        foreach (object told in read.Problems.Concat(read.Queries))
        {
            output.Message(told.ToString()!);
        }

        return read.Case is not null;
    }

    private int NoPlan(OpenedCase opened)
    {
        output.Message($"progression reassess: the case {opened.Case.Code} has no plan yet.");
        return ExitCode.NoInput;
    }

    private static IEnumerable<Problem> OfReason(string? accept, string? reason)
    {
        bool blank = string.IsNullOrWhiteSpace(reason);
        if (accept == None && blank)
        {
            yield return new Problem("--reason", "Refusing the whole proposal asks for a reason.", $"1 to {MostReason} characters", "");
        }
        else if (accept is null && reason is not null)
        {
            yield return new Problem("--reason", "A reason belongs to a decision.", "together with --accept", Found.Of(reason));
        }
        else if (reason is { Length: > MostReason })
        {
            yield return new Problem("--reason", "The reason is too long.", $"1 to {MostReason} characters", Found.Of(reason));
        }
    }

    private sealed record Asked(OpenedCase Opened, PlanRevision Plan, CaseBook Book, ClinicalLibrary Library)
    {
        public required string? Accept { get; init; }

        public required string? Reason { get; init; }

        public required int? Weeks { get; init; }
    }
}
