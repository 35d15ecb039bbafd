using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Quantities;
using Progression.Core.Rules;

namespace Progression.Core.Tests.Rules;

public sealed partial class LadderRulesTests
{
    // 80 kg; 0.5, 0.6 and 0.7 Nm/kg are invented for the tests: no published figure was found, so nothing is shipped.
    private static readonly ClinicalLibrary PerMass = WithPerMass(
        (LimitIds.HighToReducedPerMass, 0.5), (LimitIds.ReducedToLowPerMass, 0.6), (LimitIds.StopPerMass, 0.7));

    [Theory]
    [InlineData(Rung.Reduced, 47.9, Truth.DoesNotHold)]
    [InlineData(Rung.Reduced, 48, Truth.Holds)]
    [InlineData(Rung.Reduced, 48.1, Truth.Holds)]
    [InlineData(Rung.LowVolume, 55.9, Truth.DoesNotHold)]
    [InlineData(Rung.LowVolume, 56, Truth.Holds)]
    public void Torque_per_body_mass_stands_in_for_the_index_where_the_clinic_sets_a_limit(Rung rung, double torque, Truth expected) =>
        Assert.Equal(expected, Down(Weighed(torque, OtherKnee.Operated), rung, library: PerMass));

    [Fact]
    public void Torque_per_body_mass_does_not_count_beside_a_sound_knee() =>
        Assert.Equal(Truth.DoesNotHold, Down(Weighed(48, OtherKnee.Sound), Rung.Reduced, library: PerMass));

    [Fact]
    public void Without_a_limit_of_the_clinic_nothing_is_made_of_torque_per_body_mass() =>
        Assert.Equal(Truth.DoesNotHold, Down(Weighed(400, OtherKnee.Operated), Rung.Reduced));

    [Fact]
    public void Torque_per_body_mass_is_not_known_without_the_mass()
    {
        Knee weighed = Weighed(48, OtherKnee.Painful);
        Knee unweighed = weighed with { Case = weighed.Case with { BodyMass = null } };
        Assert.Equal(Truth.NotKnown, Down(unweighed, Rung.Reduced, library: PerMass));
    }

    // 1000 Nm before the operation keeps the pre-op branch shut.
    private static Knee Weighed(double torque, OtherKnee other)
    {
        Knee knee = Ready(Look.Well.With(MeasureIds.QuadricepsTorque, torque).With(MeasureIds.OtherTorque, 400)).OtherIs(other);
        return knee with { Case = knee.Case with { BodyMass = Mass.FromKilograms(80), PreOp = Look.Empty.With(MeasureIds.QuadricepsTorque, 1000).On(-7) } };
    }

    private static ClinicalLibrary WithPerMass(params (string Id, double Value)[] limits) => Knee.Library with
    {
        Limits = limits.Aggregate(
            Knee.Library.Limits,
            (all, limit) => all.Add(limit.Id, new Limit(limit.Id, "Torque per body mass", limit.Value, "Nm/kg", new Source("invented for the tests", Standing.CommonPractice)))),
    };
}
