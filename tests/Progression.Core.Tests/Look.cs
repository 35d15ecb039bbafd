using System.Collections.Immutable;
using Progression.Core.Library;
using Progression.Core.People;

namespace Progression.Core.Tests;

/// <summary>What one visit finds: readings by measure and answers by sign. Tests start from <see cref="Well"/> and change one thing.</summary>
internal sealed record Look(ImmutableSortedDictionary<string, double> Readings, ImmutableSortedDictionary<string, Answer> Answers)
{
    /// <summary>Nothing measured, nothing asked.</summary>
    internal static Look Empty { get; } = new(
        ImmutableSortedDictionary.Create<string, double>(StringComparer.Ordinal), ImmutableSortedDictionary.Create<string, Answer>(StringComparer.Ordinal));

    /// <summary>
    /// A knee that may step down but not stop: lag 3 deg with full passive extension, half its pre-op strength (100 Nm, see <see cref="Knee.Well"/>) and
    /// half the other leg's, no flag, no irritation.
    /// </summary>
    internal static Look Well { get; } = Empty
        .With(MeasureIds.ExtensionPassive, 1).Lag(3).With(MeasureIds.FlexionActive, 100)
        .With(MeasureIds.QuadricepsTorque, 50).With(MeasureIds.OtherTorque, 100).With(MeasureIds.StraightLegRaises, 10)
        .With(MeasureIds.Effusion, 1).With(MeasureIds.PainRest, 2).With(MeasureIds.PainActivity, 3)
        .Says(Signs.StraightLegRaise, Answer.Yes).Says(Signs.LagGrows, Answer.No).Says(Signs.SettledByMorning, Answer.Yes)
        .Says(Signs.PopFallOrGap, Answer.No).Says(Signs.ClotSigns, Answer.No).Says(Signs.InfectionSigns, Answer.No).Says(Signs.UrgentSigns, Answer.No)
        .Says(Signs.StimContraction, Answer.Yes).Says(Signs.ContractionVisible, Answer.Yes).Says(Signs.SensationNormal, Answer.Yes);

    internal Look With(string measure, double value) => this with { Readings = Readings.SetItem(measure, value) };

    internal Look Says(string sign, Answer answer) => this with { Answers = Answers.SetItem(sign, answer) };

    /// <summary>Without a measure or a sign: not taken, not asked.</summary>
    internal Look Without(string id) => new(Readings.Remove(id), Answers.Remove(id));

    /// <summary>With the active deficit that makes this lag against the passive one.</summary>
    internal Look Lag(double degrees) => With(MeasureIds.ExtensionActive, Readings[MeasureIds.ExtensionPassive] + degrees);

    internal Assessment On(int day) => new(
        Knee.Day(day),
        Readings.ToImmutableSortedDictionary(pair => pair.Key, pair => new Reading(pair.Key, pair.Value), StringComparer.Ordinal),
        Answers);
}
