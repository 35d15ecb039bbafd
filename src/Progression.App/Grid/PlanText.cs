using System.Collections.Immutable;
using Progression.App.Pictures;
using Progression.Core.Entry;
using Progression.Core.Findings;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Plans;

namespace Progression.App.Grid;

/// <summary>A plan and its findings as plain text, no line wider than it may be.</summary>
public static class PlanText
{
    /// <summary>The caution under every plan that is printed.</summary>
    public const string Caution = Core.Documents.Caution.Text;

    /// <summary>Columns of a printed plan when nothing else is asked for.</summary>
    public const int UsualWidth = 120;

    /// <summary>Columns of an answer without a grid.</summary>
    public const int AnswerWidth = 100;

    private const string Marks = "Marks: X stop, ! severe, ? warning, i note; (n) measured in that week; * set by hand; · before the plan's first day; ! at a figure of the checks: over its limit; … shortened.";

    /// <summary>A whole plan: what it is for, its grid, what the grid has no room for, its findings.</summary>
    /// <param name="desk">What lies beside the plan.</param>
    /// <param name="plan">The plan.</param>
    /// <param name="width">Columns, at least <see cref="GridText.Narrowest"/>.</param>
    /// <param name="mark">What stands first: whether it is signed, by whom; a line each.</param>
    public static string Of(PlanDesk desk, PlanRevision plan, int width, ImmutableArray<string> mark)
    {
        ArgumentNullException.ThrowIfNull(desk);
        ArgumentNullException.ThrowIfNull(plan);
        return string.Join('\n',
        [
            .. mark.SelectMany(line => Wrapped(line, width)),
            "",
            .. Wrapped(Heading(desk.Case, plan), width),
            .. Wrapped(Stim(desk.Library, plan), width),
            "",
            GridText.Of(desk, plan, width),
            "",
            .. Wrapped(Marks, width),
            .. Skills(plan, width),
            "",
            Of(desk.Check(plan), width),
            "",
            .. Wrapped(Caution, width),
        ]);
    }

    /// <summary>All findings, how many first; or that there are none.</summary>
    public static string Of(ImmutableArray<Finding> findings, int width) =>
        string.Join('\n', [FindingWords.Counts(findings), .. findings.SelectMany(finding => Of(finding, width))]);

    private static string Heading(Case patient, PlanRevision plan)
    {
        Operation operation = patient.Operation;
        return $"{patient.Code}: {operation.Procedure}, {operation.Side.ToString().ToLowerInvariant()} knee, {operation.Date:yyyy-MM-dd} (day 0). "
            + $"Plan of {plan.Weeks} weeks, first day {plan.From:yyyy-MM-dd}.";
    }

    // A plan from the store may follow a regimen that the library no longer has.
    private static string Stim(ClinicalLibrary library, PlanRevision plan) =>
        !plan.StimBarred.IsEmpty ? $"Stim is barred. {string.Join(" ", plan.StimBarred)}"
        : library.Regimens.GetValueOrDefault(plan.Regimen) is { } regimen ? $"Stim: {regimen.Title} ({regimen.Id}; {regimen.Source})"
        : $"Stim: {plan.Regimen}, which the library does not have";

    private static IEnumerable<string> Skills(PlanRevision plan, int width) =>
        from week in Enumerable.Range(1, plan.Weeks)
        let skills = plan.ContentAt(Lanes.Seen, week) as SkillCell
        where skills is not null
        from line in Wrapped($"Skills by the end of week {week}: {skills.Text}", width)
        select line;

    private static IEnumerable<string> Of(Finding finding, int width) =>
    [
        .. Wrapped(FindingWords.Line(finding), width),
        .. Under($"Rule {finding.Rule}" + (finding.Limits.Any(limit => limit.Source == finding.Source) ? "" : $"; {finding.Source}"), width),
        .. finding.Limits.SelectMany(limit => Under($"Limit: {limit.Title}: {limit.Text}; {limit.Source}", width)),
        .. finding.Cure is { } cure ? Under($"Cure: {cure.Text}", width) : [],
    ];

    private static IEnumerable<string> Under(string text, int width) => Wrapped(text, width - 4).Select(line => "    " + line);

    internal static IReadOnlyList<string> Wrapped(string text, int width) => TextFit.Wrap(SafeText.OneLine(text), width);
}
