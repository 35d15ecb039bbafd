using System.Collections.Immutable;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Records.Cases;
using Progression.Records.Library;

namespace Progression.Benchmarks;

/// <summary>The invented case of the example file, and the same with a visit in each of the six weeks that follow.</summary>
internal static class SampleCase
{
    public static ClinicalLibrary Library { get; } = LibraryReader.Default();

    /// <summary>After the first visit, when the plan is drafted.</summary>
    public static Case AtFirst { get; } = Example();

    /// <summary>Six visits later, when it is checked.</summary>
    public static Case Patient { get; } = WithVisits(AtFirst, 6);

    /// <summary>After twenty visits, one in each week, with a plan of 26 weeks.</summary>
    public static Case Long { get; } = WithVisits(AtFirst, 19) with { Weeks = PostOpWeek.Longest };

    private static Case Example()
    {
        using MemoryStream file = new();
        using Stream embedded = typeof(SampleCase).Assembly.GetManifestResourceStream("case.yaml")!;
        embedded.CopyTo(file);
        CaseFileResult read = CaseFileReader.Read("case.yaml", file.ToArray(), Library, new DateOnly(2026, 12, 31));
        return read.Case ?? throw new InvalidOperationException($"The example is wrong: {read.Problems[0]}");
    }

    private static Case WithVisits(Case patient, int visits) =>
        patient with { Assessments = [.. patient.Assessments, .. Enumerable.Range(1, visits).Select(weeks => Visit(patient.Assessments[^1], weeks))] };

    /// <summary>A knee that gets better by a fixed step a week, as far as it goes.</summary>
    private static Assessment Visit(Assessment first, int weeks)
    {
        ImmutableSortedDictionary<string, Reading> readings = first.Readings
            .SetItem(MeasureIds.FlexionActive, new Reading(MeasureIds.FlexionActive, Math.Min(125, 62 + (7 * weeks))))
            .SetItem(MeasureIds.ExtensionActive, new Reading(MeasureIds.ExtensionActive, Math.Max(1, 18 - (2 * weeks))))
            .SetItem(MeasureIds.ExtensionPassive, new Reading(MeasureIds.ExtensionPassive, Math.Max(0, 8 - weeks)))
            .SetItem(MeasureIds.QuadricepsForce, new Reading(MeasureIds.QuadricepsForce, 52 + (12 * weeks)));
        return first with { Date = first.Date.AddDays(7 * weeks), Readings = readings };
    }
}
