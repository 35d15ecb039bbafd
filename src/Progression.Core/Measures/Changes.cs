using System.Collections.Immutable;
using Progression.Core.Library;

namespace Progression.Core.Measures;

/// <summary>The one place where two readings are compared: what the rules, the screens and the commands say of a change comes from here.</summary>
public static class Changes
{
    /// <summary>
    /// What can be said of a measure, derived ones included, at two visits; null when one of them does not have it. Passive flexion is not taken for active.
    /// </summary>
    /// <param name="old">The older visit.</param>
    /// <param name="now">The newer visit.</param>
    /// <param name="measure">The id of the measure.</param>
    /// <param name="library">The library with errors and limits.</param>
    public static Change? Between(KneeState old, KneeState now, string measure, ClinicalLibrary library)
    {
        ArgumentNullException.ThrowIfNull(old);
        ArgumentNullException.ThrowIfNull(now);
        ArgumentNullException.ThrowIfNull(library);
        return old.OwnValue(measure) is double before && now.OwnValue(measure) is double after && library.Measures.TryGetValue(measure, out Measure? known)
            ? Judge(Bare(known, (old.Date, before), (now.Date, after), library), Yardstick.Of(old, now, known, library), library)
            : null;
    }

    /// <summary>
    /// The last visit against the latest earlier one that has the measure; null when there is none. With a third visit it also tells a second fall in a row,
    /// and on a scale of steps a smaller step that is seen again: then the older reading is the one before the step.
    /// </summary>
    /// <param name="states">The visits since the operation, oldest first.</param>
    /// <param name="measure">The id of the measure.</param>
    /// <param name="library">The library with errors and limits.</param>
    public static Change? FromLast(ImmutableArray<KneeState> states, string measure, ClinicalLibrary library)
    {
        ImmutableArray<KneeState> seen = [.. states.Where(state => state.OwnValue(measure) is not null)];
        if (seen.Length < 2 || seen[^1] != states[^1] || Between(seen[^2], seen[^1], measure, library) is not { } last)
        {
            return null;
        }

        return seen.Length < 3 || last.Class != ChangeClass.NoDetectableChange || Between(seen[^3], seen[^2], measure, library) is not { } before
            ? last
            : Confirmed(before, Between(seen[^3], seen[^1], measure, library)!) ?? FallenTwice(before, last);
    }

    private static Change Bare(Measure measure, (DateOnly Day, double Value) old, (DateOnly Day, double Value) now, ClinicalLibrary library) => new()
    {
        Measure = measure,
        From = old.Day,
        To = now.Day,
        Old = old.Value,
        New = now.Value,
        IsBetter = measure.Better == Direction.HigherIsBetter ? now.Value > old.Value : now.Value < old.Value,
        Detectable = null,
        LevelPercent = library.Limit(LimitIds.ChangeLevel).Value,
        Class = null,
        Source = measure.Source,
    };

    private static Change Judge(Change bare, Yardstick yardstick, ClinicalLibrary library)
    {
        if (yardstick.Length is not double length)
        {
            return Weighed(bare with { Notes = yardstick.Notes, Source = yardstick.Source, WhyNot = yardstick.WhyNot });
        }

        double detectable = Yardstick.InUnit(length, bare);
        Change change = bare with { Notes = yardstick.Notes, Source = yardstick.Source, Detectable = detectable };
        bool worse = change is { IsBetter: false, Difference: not 0 };
        bool single = bare.Measure.ConfirmedStep is double step && Reaches(change.Difference, step);
        ChangeClass found = !Reaches(change.Difference, detectable) ? ChangeClass.NoDetectableChange : worse ? ChangeClass.Worse : ChangeClass.Improved;
        bool early = Reaches(change.Difference, Yardstick.InUnit(length * library.Limit(LimitIds.EarlyWorsening).Value, change));
        bool open = found == ChangeClass.NoDetectableChange;
        return Weighed(change with
        {
            Class = found,
            PossiblyWorse = open && worse && (early || single),
            Notes = open && single ? change.Notes.Insert(0, "a single step: it counts once the next visit shows it again") : change.Notes,
            ErrorOld = yardstick.Errors?.Old,
            ErrorNew = yardstick.Errors?.New,
            ErrorCorrelation = bare.Measure.Id == MeasureIds.Lag ? library.Limit(LimitIds.LagErrorCorrelation).Value : null,
        });
    }

    /// <summary>Both later readings on the same side of the one before, by at least the step that counts when it is seen twice.</summary>
    private static Change? Confirmed(Change first, Change across) =>
        across.Measure.ConfirmedStep is double step && first.Class == ChangeClass.NoDetectableChange
        && Math.Sign(first.Difference) == Math.Sign(across.Difference) && Reaches(first.Difference, step) && Reaches(across.Difference, step)
            ? across with
            {
                Class = across.IsBetter ? ChangeClass.Improved : ChangeClass.Worse,
                PossiblyWorse = false,
                Detectable = step,
                Notes = ["seen at two visits in a row"],
            }
            : null;

    private static Change FallenTwice(Change first, Change last) =>
        first is { Class: not null, IsBetter: false, Difference: not 0 } && last is { IsBetter: false, Difference: not 0 }
            ? last with { PossiblyWorse = true, Notes = last.Notes.Insert(0, "worse at two visits in a row") }
            : last;

    private static Change Weighed(Change change)
    {
        if (change.Matters is not { } figure || (change.WhyNot is not null && change.Measure.SameStairs))
        {
            return change;
        }

        bool reached = Reaches(change.Difference, figure.Amount);
        bool sure = change.Class is ChangeClass.Improved or ChangeClass.Worse;
        return change with { Importance = !reached ? Importance.NotShown : sure ? Importance.Important : Importance.CouldBe };
    }

    // A hair of binary fraction must not decide: 10.3 - 5.3 is 5.
    private static bool Reaches(double difference, double amount) => Math.Abs(difference) >= amount - 1e-9;
}
