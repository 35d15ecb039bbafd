using System.Collections.Concurrent;
using System.Collections.Immutable;
using Progression.Core.Checks;
using Progression.Core.Findings;
using Progression.Core.Forecasts;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Plans;
using Progression.Core.Rules;

namespace Progression.App.Grid;

/// <summary>What lies on the desk beside the plan: everything the grid reads and never changes.</summary>
public sealed record PlanDesk
{
    /// <summary>The case the plan is for.</summary>
    public required Case Case { get; init; }

    /// <summary>The clinical library.</summary>
    public required ClinicalLibrary Library { get; init; }

    /// <summary>The present day; it marks the present week.</summary>
    public required DateOnly Today { get; init; }

    /// <summary>All findings on a plan, in any order.</summary>
    public required Func<PlanRevision, ImmutableArray<Finding>> Check { get; init; }

    /// <summary>The answer to "why" for a cell, given the plan and its findings.</summary>
    public required Func<PlanRevision, ImmutableArray<Finding>, CellAddress, Explanation> Explain { get; init; }

    /// <summary>The forecast of a measure from the latest assessment.</summary>
    public Func<string, ForecastAnswer> Forecast { get; init; } = _ => new ForecastAnswer(null, "No forecast is made here.");

    /// <summary>What the ladder rules came to at the latest assessment; null before the first stim session.</summary>
    public Func<LadderVerdict?> Verdict { get; init; } = () => null;

    /// <summary>The desk of a case, with every rule of the program.</summary>
    public static PlanDesk For(Case patient, ClinicalLibrary library, DateOnly today) => new()
    {
        Case = patient,
        Library = library,
        Today = today,
        Check = plan => PlanCheck.Check(patient, plan, library),
        Explain = (plan, findings, address) => Why.Of(patient, plan, library, findings, address),
        Forecast = Forecasts(patient, library),
        Verdict = VerdictLater(patient, library),
    };

    private static Func<LadderVerdict?> VerdictLater(Case patient, ClinicalLibrary library)
    {
        Lazy<LadderVerdict?> verdict = new(() => patient.Assessments.IsEmpty ? null : LadderCourse.Of(patient, library, patient.Assessments[^1].Date).Latest);
        return () => verdict.Value;
    }

    /// <summary>Each forecast is made once, when it is first asked for.</summary>
    private static Func<string, ForecastAnswer> Forecasts(Case patient, ClinicalLibrary library)
    {
        ConcurrentDictionary<string, ForecastAnswer> made = new(StringComparer.Ordinal);
        return measure => patient.Assessments.IsEmpty
            ? new ForecastAnswer(null, "Nothing was measured since the operation.")
            : made.GetOrAdd(measure, id => Forecasting.Of(patient, library, id, patient.Assessments[^1].Date));
    }
}
