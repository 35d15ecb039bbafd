using BenchmarkDotNet.Attributes;
using Progression.Core.Checks;
using Progression.Core.Doses;
using Progression.Core.Drafting;
using Progression.Core.Forecasts;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Plans;
using Progression.Core.Reassessing;
using Progression.Core.Rules;

namespace Progression.Benchmarks;

/// <summary>What follows a visit, and each key while something is tried out: 26 weeks, 20 assessments. The aims are measured against, never asserted.</summary>
[MemoryDiagnoser]
public class ReassessmentBenchmarks
{
    private readonly Case _patient = SampleCase.Long;
    private readonly ClinicalLibrary _library = SampleCase.Library;
    private readonly DateOnly _day = SampleCase.Long.Assessments[^1].Date;
    private PlanRevision _standing = null!;

    /// <summary>A plan that was drafted before the last visit.</summary>
    [GlobalSetup]
    public void Setup()
    {
        Case before = _patient with { Assessments = _patient.Assessments[..^1] };
        _standing = PlanDraft.Draft(before, _library).Value!;
    }

    /// <summary>Changes, forecasts of all measures with their milestones and surprises, ladder, red flags and proposal.</summary>
    [Benchmark(Description = "Full reassessment, aim 20 ms")]
    public int FullReassessment() => Reassessment.Of(_standing, _patient, _library).Forecasts.Values.Select(answer => answer.Forecast).OfType<Forecast>()
        .Sum(forecast => forecast.Milestones.Length + (forecast.Surprise is null ? 0 : 1));

    /// <summary>Another reading: the grid, its findings and the forecast of the measure.</summary>
    [Benchmark(Description = "What-if key, aim 5 ms")]
    public (int Findings, double Expected) WhatIfKey()
    {
        WhatIf scratch = Redrafted();
        return (Checked(scratch), Expected(scratch, MeasureIds.Lag));
    }

    /// <summary>All that a key comes to with every milestone lane in sight: also the weekly figures, the verdict and the forecasts of the four lanes.</summary>
    [Benchmark(Description = "What-if key with all that is drawn")]
    public int WhatIfKeyDrawn()
    {
        WhatIf scratch = Redrafted();
        int weeks = PlanFigures.Of(scratch.Plan, _library).Length + DoneFigures.Of(scratch.Plan, scratch.Patient, _library).Length;
        int verdicts = LadderCourse.Of(scratch.Patient, _library, _day).Verdicts.Length;
        int forecasts = Lanes.For(withStim: true).Select(lane => lane.Measure).OfType<string>().Distinct().Count(id => Expected(scratch, id) > 0);
        return Checked(scratch) + weeks + verdicts + forecasts;
    }

    /// <summary>The altered case and the plan drafted from it.</summary>
    [Benchmark(Description = "of it, the redraft")]
    public WhatIf Redrafted() => WhatIf.With(_standing, _patient, _library, MeasureIds.Lag, 7).Value!;

    /// <summary>What the cells of a milestone lane show: the middle of each week; 0 where there is no forecast.</summary>
    private double Expected(WhatIf scratch, string measure) => Forecasting.Of(scratch.Patient, _library, measure, _day).Forecast is { } forecast
        ? Enumerable.Range(1, scratch.Plan.Weeks).Sum(week => forecast.At(week).Median)
        : 0;

    private int Checked(WhatIf scratch) => PlanCheck.Check(scratch.Patient, scratch.Plan, _library).Length;
}
