using System.Collections.Immutable;
using BenchmarkDotNet.Attributes;
using Progression.Core.Checks;
using Progression.Core.Drafting;
using Progression.Core.Findings;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Plans;
using Progression.Records.Plans;

namespace Progression.Benchmarks;

/// <summary>What a person waits for, by the number of weeks; the lanes are the same for all, so cells grow with weeks.</summary>
[MemoryDiagnoser]
public class PlanBenchmarks
{
    private static readonly CellAddress Edited = new(Lanes.Stim, 3);
    private static readonly StimCell Content = new(Rung.HighVolume, 12, 2, DaysOfWeek.Every);

    private readonly Case _patient = SampleCase.Patient;
    private readonly ClinicalLibrary _library = SampleCase.Library;
    private PlanRevision _plan = null!;
    private ImmutableArray<Finding> _findings;
    private string _json = "";

    /// <summary>Weeks of the plan.</summary>
    [Params(6, 13, 26)]
    public int Weeks { get; set; }

    /// <summary>Drafts the plan the others work on.</summary>
    [GlobalSetup]
    public void Setup()
    {
        _plan = Draft();
        _findings = PlanCheck.Check(_patient, _plan, _library);
        _json = PlanJson.Write(_plan);
    }

    /// <summary>A whole plan from a case.</summary>
    [Benchmark]
    public PlanRevision Draft() => PlanDraft.Draft(SampleCase.AtFirst, _library, new DraftOrder { Weeks = Weeks }).Value!;

    /// <summary>What follows the change of one cell: every rule is read again.</summary>
    [Benchmark]
    public ImmutableArray<Finding> EditAndCheck() => PlanCheck.Check(_patient, PlanEdit.Set(_plan, Edited, Content), _library);

    /// <summary>The answer for one stim cell.</summary>
    [Benchmark]
    public Explanation WhyOfOneCell() => Why.Of(_patient, _plan, _library, _findings, Edited);

    /// <summary>The plan as text.</summary>
    [Benchmark]
    public string WriteJson() => PlanJson.Write(_plan);

    /// <summary>The plan from its text.</summary>
    [Benchmark]
    public PlanRevision ReadJson() => PlanJson.Read(_json);
}
