using System.Collections.Immutable;

namespace Progression.Core.Sheets;

/// <summary>Every text that a language file must have, with the blanks it may use. What is not here is a slip of the pen.</summary>
public static class HomeWordKeys
{
    /// <summary>The list that tells what the figures in the drawing of the thigh stand for, and how many there are.</summary>
    public static (string Key, int Count) Legend { get; } = ("picture.legend", 4);

    /// <summary>Single texts.</summary>
    public static ImmutableSortedDictionary<string, ImmutableArray<string>> Texts { get; } = Of(
        ("labels.title", ""), ("labels.week", "week from to"), ("labels.plan_for", "code side"), ("labels.side_left", ""), ("labels.side_right", ""),
        ("labels.done", ""), ("labels.day_names", ""), ("labels.stim", ""), ("labels.stim_rest", ""), ("labels.exercises", ""), ("labels.no_exercises", ""),
        ("labels.stop", ""), ("labels.today", ""), ("labels.emergency", ""), ("labels.call", "contact"), ("labels.call_open", ""), ("labels.notes", ""),
        ("labels.unsigned", ""), ("labels.signed", "name day revision"), ("labels.changed", ""), ("labels.surgeon", ""),
        ("doses.times", "count"), ("doses.sets", "count sets"), ("doses.hold", "seconds"), ("doses.minutes", "minutes"), ("doses.a_day_once", ""),
        ("doses.a_day", "times"), ("doses.load_kg", "load"), ("doses.load_effort", "effort"), ("doses.load_share", ""), ("doses.effort_light", ""),
        ("doses.effort_some", ""), ("doses.effort_hard", ""), ("stim.position_seated", ""), ("stim.position_lying", ""), ("stim.once", ""), ("stim.times", "times"),
        ("picture.words", "side"));

    /// <summary>Lists of sentences.</summary>
    public static ImmutableSortedDictionary<string, ImmutableArray<string>> Lists { get; } = Of(
        ("stim.before", ""), ("stim.pads", "pad"), ("stim.go", "on off contractions sessions"), ("stim.after", ""), ("stim.never", ""),
        ("picture.legend", ""), ("stop", ""), ("today", ""), ("emergency", ""));

    private static ImmutableSortedDictionary<string, ImmutableArray<string>> Of(params (string Key, string Blanks)[] keys) =>
        keys.ToImmutableSortedDictionary(one => one.Key, one => one.Blanks.Split(' ', StringSplitOptions.RemoveEmptyEntries).ToImmutableArray(), StringComparer.Ordinal);
}
