using Progression.App.Actions;
using static Progression.App.Actions.ActionRow;

namespace Progression.App.Reviews;

/// <summary>The one table of the queue's keys.</summary>
public static class QueueActions
{
    private const int Page = 15;

    /// <summary>The table.</summary>
    public static ActionTable<QueueState> Table { get; } = new(
        state => state.Mode.ToString(),
        [
            .. List().In(nameof(QueueMode.List), "Reviews that wait"),
            .. CommonRows.Help<QueueState>(state => state with { Mode = QueueMode.List, Scroll = 0 }, Scrolled).In(nameof(QueueMode.Help), "Reading the help"),
        ]);

    private static IEnumerable<ScreenAction<QueueState>> List() =>
    [
        Shows<QueueState>("help", ["F1", "?"], "this page", state => state with { Mode = QueueMode.Help, Scroll = 0 }).Hinted(1, "help"),
        Does<QueueState>("open", ["Enter"], "review the plan: changes, why; comment, return, sign", state => Step.To(state with { Status = "" }, new OpenReview(state.Chosen!.Code)))
            .Hinted(2, "review").Unless(state => state.Chosen is null ? "No review waits." : null),
        Does<QueueState>("read", ["Ctrl+R"], "read the queue again", state => Step.To(state, new ReadQueue())).Hinted(5, "read again"),
        Does<QueueState>("leave", ["q", "Esc", "Ctrl+Q"], "to the list of cases", state => Step.To(state, new LeaveScreen())).Hinted(3, "cases").AsBack(),
        Shows<QueueState>("up", ["Up", "k"], "the one above", state => state.To(state.Index - 1)),
        Shows<QueueState>("down", ["Down", "j"], "the one below", state => state.To(state.Index + 1)).Hinted(4, "below"),
        Shows<QueueState>("page-up", ["PgUp"], "a page up", state => state.To(state.Index - Page)),
        Shows<QueueState>("page-down", ["PgDn"], "a page down", state => state.To(state.Index + Page)),
        Shows<QueueState>("first", ["Home", "g"], "the first", state => state.To(0)),
        Shows<QueueState>("last", ["End", "G"], "the last", state => state.To(int.MaxValue)),
        CommonRows.Repaint<QueueState>(),
    ];

    private static QueueState Scrolled(QueueState state, int lines) => state with { Scroll = Math.Clamp(state.Scroll + lines, 0, QueuePicture.HelpLines.Count - 1) };
}
