using System.Collections.Immutable;
using Progression.Core.Entry;
using Progression.Core.Library;
using Progression.Records.Yaml;

namespace Progression.Records.Library;

/// <summary>Reads exercises.yaml. Each slot must keep an exercise of rank 1.</summary>
internal static class ExerciseReader
{
    private const int LongestShort = 10;
    private static readonly NumberRange Ranks = new(1, 20, "1");

    /// <summary>The slots a week with stim cannot do without: their first exercise asks for nothing.</summary>
    private static readonly ImmutableArray<ActiveSlot> AlwaysOpen = [ActiveSlot.QuadsWithStim, ActiveSlot.QuadsStrength];

    public static ImmutableSortedDictionary<string, Exercise> Read(LibraryEntries entries)
    {
        ImmutableSortedDictionary<string, Exercise> exercises = entries.All.Select(One).OfType<Exercise>()
            .ToImmutableSortedDictionary(exercise => exercise.Id, exercise => exercise, StringComparer.Ordinal);
        if (exercises.Count == entries.All.Count)
        {
            CheckSlots(entries, exercises);
        }

        return exercises;
    }

    private static Exercise? One(LibraryEntry entry)
    {
        Fields fields = entry.Fields;
        int before = fields.Problems.Count;
        ExerciseDose? start = fields.Map("start", Need.Required) is Fields dose ? DoseFields.Start(dose) : null;
        Exercise exercise = new()
        {
            Id = entry.Id,
            Title = fields.Text("title", Need.Required, 60) ?? "",
            Short = fields.Text("short", Need.Required, LongestShort) ?? "",
            PatientName = fields.Text("patient_name", Need.Required, 80) ?? "",
            Muscle = fields.OneOf<MuscleGroup>("muscle", Need.Required) ?? MuscleGroup.None,
            Purpose = fields.Text("purpose", Need.Required) ?? "",
            Slot = fields.OneOf<ActiveSlot>("slot", Need.Required) ?? ActiveSlot.Walking,
            Rank = fields.Whole("rank", Need.Required, Ranks) ?? 1,
            Position = fields.Text("position", Need.Required) ?? "",
            Contraction = fields.OneOf<ContractionType>("contraction", Need.Required) ?? ContractionType.Passive,
            Needs = fields.Map("needs", Need.Optional) is Fields needs ? Needs(needs) : new ExerciseNeeds(),
            Start = start ?? ExerciseDose.InRepetitions(1, 1),
            Progression = fields.Map("grows", Need.Required) is Fields grows && start is not null ? DoseFields.Growth(grows, start) : DoseFields.NoGrowth,
            RepetitionSeconds = fields.As("repetition_time", Need.Required, QuantityText.Duration.Within(0, 120).Read)?.Seconds ?? 0,
            Resisted = fields.YesNo("resisted", Need.Required) ?? true,
            Source = fields.Source(),
        };
        fields.Done();
        return fields.Problems.Count == before ? exercise : null;
    }

    private static ExerciseNeeds Needs(Fields fields)
    {
        ExerciseNeeds needs = new()
        {
            LagAtMost = fields.As("lag_at_most", Need.Optional, QuantityText.Angle.Within(0, 60).Read),
            FlexionAtLeast = fields.As("flexion_at_least", Need.Optional, QuantityText.Angle.Within(0, 160).Read),
            WeightBearingAtLeast = fields.OneOf<WeightBearing>("weight_bearing_at_least", Need.Optional),
            ContractionVisible = fields.YesNo("contraction_visible", Need.Optional) ?? false,
            StraightLegRaise = fields.YesNo("straight_leg_raise", Need.Optional) ?? false,
            IndexAtLeast = fields.As("index_at_least", Need.Optional, QuantityText.Percentage.Within(1, 150).Read),
            WeekAtLeast = fields.Whole("week_at_least", Need.Optional, new NumberRange(1, 52, "wk")),
        };
        fields.Done();
        return needs;
    }

    private static void CheckSlots(LibraryEntries entries, ImmutableSortedDictionary<string, Exercise> exercises)
    {
        foreach (ActiveSlot slot in Enum.GetValues<ActiveSlot>())
        {
            Exercise[] first = [.. exercises.Values.Where(exercise => exercise.Slot == slot && exercise.Rank == 1)];
            bool asksNothing = AlwaysOpen.Contains(slot);
            if (!first.Any(exercise => !asksNothing || exercise.Needs == new ExerciseNeeds()))
            {
                string allowed = $"at least one exercise of slot \"{EnumWords.Of(slot)}\" with rank 1{(asksNothing ? " and no needs" : "")}";
                entries.Refuse(new Problem("exercises", "A slot has nothing to begin with.", allowed, string.Join(", ", first.Select(exercise => exercise.Id))));
            }
        }
    }
}
