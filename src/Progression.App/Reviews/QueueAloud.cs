using Progression.App.Actions;

namespace Progression.App.Reviews;

/// <summary>The queue in words.</summary>
internal static class QueueAloud
{
    public static ScreenAloud<QueueState> Words { get; } = new()
    {
        Here = state => state.Mode != QueueMode.List ? null
            : state.Chosen is null ? ["No plan waits for a review."]
            : [$"{state.Index + 1} of {state.Waiting.Length}: {Line(state, state.Index)}"],
        Read = (state, part) => part.Length > 0 || state.Mode != QueueMode.List ? null : Enumerable.Range(0, state.Waiting.Length).Select(index => Line(state, index)),
        Go = (state, words) => state.Mode == QueueMode.List && SpokenNames.Fitting(words, state.Waiting.Select(one => one.Code.Text)) is { Count: > 0 } found ? state.To(found[0]) : null,
    };

    private static string Line(QueueState state, int index) =>
        QueueWords.Whole(state.Waiting[index], state.Now) + (state.IsOwn(state.Waiting[index]) ? $" {QueueWords.NotYours}." : "");
}
