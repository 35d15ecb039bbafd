using System.Collections.Immutable;
using Bogus;
using Progression.Core.People;
using Progression.Core.Quantities;

namespace Progression.SeedDemo;

/// <summary>Fills in what is logged of a session besides its stim: exercises with sets and loads, pain, comfort, skin, home work.</summary>
/// <param name="story">The knee's story.</param>
/// <param name="chance">Seeded.</param>
internal sealed class KneeLog(KneeStory story, Randomizer chance)
{
    /// <summary>The session of a post-op day with everything that is usually logged.</summary>
    /// <param name="session">The session as far as stim goes.</param>
    /// <param name="day">Its post-op day.</param>
    /// <param name="done">Sessions before it.</param>
    public SessionLog Filled(SessionLog session, int day, int done)
    {
        bool stimulated = session.Contractions > 0;
        bool sore = story.IrritatedFrom <= day;
        int pain = Math.Max(0, (int)Math.Round(4 - (0.08 * day))) + (sore ? 1 : 0);
        return session with
        {
            Comfort = stimulated ? Math.Min(8, 3 + (done / 3)) : null,
            Exercises = Exercises(day),
            PainBefore = pain,
            PainAfter = pain + (sore ? 3 : chance.Int(0, 1)),
            // The morning after yesterday's session is asked about at the next contact.
            PainNextMorning = day == story.Day - 1 ? null : pain + (sore ? 2 : 0),
            Skin = !stimulated ? null : chance.Int(1, 6) == 1 ? SkinCheck.FadingRedness : SkinCheck.Clear,
            Adherence = done % 3 == 1 ? Percentage.FromPercent(10 * chance.Int(7, 10)) : null,
        };
    }

    private ImmutableArray<ExerciseDone> Exercises(int day) => (day / 7) switch
    {
        0 => [Sets("quad-set", (10, 3), null), Sets("helped-leg-raise", (5, 2), null), Time("walk-with-aid", 5)],
        1 => [Sets("straight-leg-raise", (10, 3), null), Sets("sit-to-stand", (8, 3), null), Time("bike-rocking", 5)],
        2 or 3 => [Earned("long-arc-full", day, 1 + (0.5 * ((day - 14) / 3))), Sets("mini-squat", (10, 3), null), Time("bike-turns", 6)],
        _ => [Earned("leg-press", day, 20 + (2.5 * Math.Min(8, (day - 28) / 4))), Sets("low-step-up", (9, 3), null), Time("bike-turns", 10)],
    };

    private ExerciseDone Sets(string exercise, (int Repetitions, int Sets) dose, double? kilograms) => new(
        exercise,
        [
            .. Enumerable.Range(0, dose.Sets).Select(set => new SetDone(
                set == dose.Sets - 1 ? dose.Repetitions - chance.Int(0, 2) : dose.Repetitions, kilograms is double load ? Mass.FromKilograms(load) : null)),
        ]);

    /// <summary>Three sets of ten; on the last days the last set has two more, which earns the next load.</summary>
    private ExerciseDone Earned(string exercise, int day, double kilograms)
    {
        Mass load = Mass.FromKilograms(kilograms);
        int last = day >= story.Day - 3 ? 12 : 10;
        return new ExerciseDone(exercise, [new SetDone(10, load), new SetDone(10, load), new SetDone(last, load)]);
    }

    private static ExerciseDone Time(string exercise, int minutes) => new(exercise, []) { Time = Duration.FromSeconds(60 * minutes) };
}
