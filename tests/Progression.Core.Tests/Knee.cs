using System.Collections.Immutable;
using Progression.Core.Checks;
using Progression.Core.Drafting;
using Progression.Core.Findings;
using Progression.Core.Library;
using Progression.Core.Measures;
using Progression.Core.People;
using Progression.Core.Plans;
using Progression.Core.Quantities;
using Progression.Core.Rules;
using Progression.Records.Library;

namespace Progression.Core.Tests;

/// <summary>A case in the making, with days counted from the operation. Everyone in it is invented.</summary>
internal sealed record Knee(Case Case)
{
    // A Monday, so that post-op weeks start on Mondays.
    private static readonly DateOnly Operated = new(2026, 3, 2);

    internal static ClinicalLibrary Library { get; } = LibraryReader.Default();

    /// <summary>A left knee with every screening question answered no, a sound other knee, 100 Nm before the operation, load as tolerated. Not yet seen.</summary>
    internal static Knee Well { get; } = new(new Case
    {
        Code = CaseCode.Parse("K-001")!,
        Operation = new Operation(Operated, Side.Left, "total knee replacement"),
        WeightBearing = WeightBearing.AsTolerated,
        OtherKnee = OtherKnee.Sound,
        Screening = new Screening(
            Operated,
            Library.Screening.ToImmutableSortedDictionary(item => item.Id, item => new ScreeningAnswer(item.Id, Answer.No, null), StringComparer.Ordinal)),
        PreOp = Look.Empty.With(MeasureIds.QuadricepsTorque, 100).On(-7),
    });

    internal static DateOnly Day(int day) => Operated.AddDays(day);

    /// <summary>The shipped library with one threshold replaced.</summary>
    internal static ClinicalLibrary LibraryWith(string limit, double value) =>
        Library with { Limits = Library.Limits.SetItem(limit, Library.Limit(limit) with { Value = value }) };

    internal Knee Seen(int day, Look look) => this with { Case = Case with { Assessments = Case.Assessments.Add(look.On(day)) } };

    internal Knee Stimulated(int day, bool? strong = null, string? note = null, double? evoked = null) => this with
    {
        Case = Case with
        {
            Sessions = Case.Sessions.Add(new SessionLog(Day(day), 15)
            {
                StrongContractionTolerated = strong,
                Note = note,
                Evoked = evoked is double torque ? Torque.FromNewtonMetres(torque) : null,
            }),
        },
    };

    /// <summary>With one screening question answered otherwise; null for not asked.</summary>
    internal Knee Screened(string item, Answer? answer, Clearance? clearance = null) => this with
    {
        Case = Case with
        {
            Screening = Case.Screening with
            {
                Answers = answer is { } given
                    ? Case.Screening.Answers.SetItem(item, new ScreeningAnswer(item, given, clearance))
                    : Case.Screening.Answers.Remove(item),
            },
        },
    };

    internal Knee OtherIs(OtherKnee other) => this with { Case = Case with { OtherKnee = other } };

    internal Knee WithoutPreOp() => this with { Case = Case with { PreOp = null } };

    internal Knee PlannedFrom(int day) => this with { Case = Case with { PlanFrom = Day(day) } };

    internal Knee Bearing(WeightBearing? load) => this with { Case = Case with { WeightBearing = load } };

    /// <summary>What the ladder looks at on the day of the last visit.</summary>
    internal LadderFacts Facts(Rung rung, int since, ClinicalLibrary? library = null) =>
        new(Case, library ?? Library, [.. Case.Assessments.Select(one => KneeState.At(one, Case))], rung, Day(since));

    internal LadderVerdict Judge(Rung rung, int since, ClinicalLibrary? library = null) => StimLadder.Judge(Facts(rung, since, library));

    internal LadderCourse Course(int upTo, ClinicalLibrary? library = null) => LadderCourse.Of(Case, library ?? Library, Day(upTo));

    internal StimGate Gate(int on, ClinicalLibrary? library = null) => StimGate.Of(Case, library ?? Library, Day(on));

    internal PlanRevision Draft(int? weeks = null, string? regimen = null, ClinicalLibrary? library = null) =>
        PlanDraft.Draft(Case, library ?? Library, new DraftOrder { Weeks = weeks, Regimen = regimen }) is var entered && entered.Value is { } plan
            ? plan
            : throw new InvalidOperationException(entered.Problems[0].ToString());

    internal ImmutableArray<Finding> Check(PlanRevision plan, ClinicalLibrary? library = null) => PlanCheck.Check(Case, plan, library ?? Library);
}
