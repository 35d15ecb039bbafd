using Progression.App.Actions;
using static Progression.App.Actions.ActionRow;

namespace Progression.App.Propose;

/// <summary>The one table of the proposal's keys.</summary>
public static class ProposeActions
{
    private const int Page = 10;
    private const int PageWidth = 78;

    /// <summary>The table.</summary>
    public static ActionTable<ProposeState> Table { get; } = new(
        state => state.Mode.ToString(),
        [
            .. Choosing().In(nameof(ProposeMode.List), "Choosing"),
            .. Reading().In(nameof(ProposeMode.List), "Reading"),
            .. Reason().In(nameof(ProposeMode.Reason), "Typing a reason"),
            .. Text("w").In(nameof(ProposeMode.Why), "Reading why"),
            .. Text("v").In(nameof(ProposeMode.Verdict), "Reading the verdict"),
            .. Text("f").In(nameof(ProposeMode.Outlook), "Reading the outlook"),
            .. Help().In(nameof(ProposeMode.Help), "Reading the help"),
        ]);

    private static IEnumerable<ScreenAction<ProposeState>> Choosing() =>
    [
        Shows<ProposeState>("turn", ["Space"], "take the change, or leave it again", Taking.Turn).Hinted(2, "take or leave").Unless(state => Taking.WhyNot(state, state.Chosen)),
        Shows<ProposeState>("all", ["a"], "take every change", Taking.All).Hinted(3, "all").Unless(WhyNothing),
        Shows<ProposeState>("none", ["n"], "take none", Taking.None).Hinted(7, "none").Unless(WhyNothing),
        Does<ProposeState>("accept", ["Ctrl+S"], "accept what is taken; a reason is asked when none is", Deciding.Accept).Hinted(4, "accept").Unless(Deciding.WhyNot),
        Does<ProposeState>("leave", ["Esc", "q"], "leave without deciding; nothing is saved", state => Step.To(state, new LeaveScreen())).Hinted(6, "leave").AsBack(),
        Shows<ProposeState>("up", ["Up", "k"], "the change above", state => state.To(state.Index - 1)),
        Shows<ProposeState>("down", ["Down", "j"], "the change below", state => state.To(state.Index + 1)),
        Shows<ProposeState>("page-up", ["PgUp"], "a page up", state => state.To(state.Index - Page)),
        Shows<ProposeState>("page-down", ["PgDn"], "a page down", state => state.To(state.Index + Page)),
        Shows<ProposeState>("first", ["Home", "g"], "the first change", state => state.To(0)),
        Shows<ProposeState>("last", ["End", "G"], "the last change", state => state.To(state.Desk.Changes.Length)),
    ];

    private static IEnumerable<ScreenAction<ProposeState>> Reading() =>
    [
        HelpOn("F1", "?"),
        Shows<ProposeState>("why", ["Enter", "w"], "why in full: inputs, rule, limits, source", state => To(state, ProposeMode.Why)).Hinted(5, "why").Unless(WhyNothing),
        Shows<ProposeState>("verdict", ["v"], "every rule of the stim ladder as it was read", state => To(state, ProposeMode.Verdict)).Hinted(8, "verdict"),
        Shows<ProposeState>("outlook", ["f"], "what is expected of the milestones", state => To(state, ProposeMode.Outlook)).Hinted(9, "outlook"),
        Does<ProposeState>("compare", ["c"], "the comparison of all visits", state => Step.To(state, new ShowComparison())),
        Shows<ProposeState>("read-on", ["]"], "read on below the list", state => Scroll(state, 3)),
        Shows<ProposeState>("read-back", ["["], "read back below the list", state => Scroll(state, -3)),
        CommonRows.Repaint<ProposeState>(),
    ];

    private static IEnumerable<ScreenAction<ProposeState>> Reason() =>
    [
        HelpOn("F1"),
        Does<ProposeState>("take", ["Enter", "Ctrl+S"], "take the reason and keep the plan as it is", Deciding.HandIn).Hinted(2, "take"),
        Shows<ProposeState>("cancel", ["Esc"], "back to the changes; nothing is decided", Deciding.Cancel).Hinted(3, "cancel").AsBack(),
        .. CommonRows.Typing<ProposeState>(Deciding.With),
        CommonRows.Repaint<ProposeState>(),
    ];

    private static IEnumerable<ScreenAction<ProposeState>> Text(string key) =>
    [
        HelpOn("F1", "?"),
        .. CommonRows.Reading<ProposeState>(Scroll),
        Shows<ProposeState>("back", ["Esc", "Enter", key, "q"], "back to the changes", state => To(state, ProposeMode.List)).Hinted(6, "back").AsBack(),
        CommonRows.Repaint<ProposeState>(),
    ];

    private static IEnumerable<ScreenAction<ProposeState>> Help() =>
        CommonRows.Help<ProposeState>(state => state with { Mode = state.HelpFor, Scroll = 0 }, Scroll);

    private static ScreenAction<ProposeState> HelpOn(params string[] keys) =>
        Shows<ProposeState>("help", [.. keys], "this page", state => state with { HelpFor = state.Mode, Mode = ProposeMode.Help, Scroll = 0 }).Hinted(1, "help");

    private static ProposeState To(ProposeState state, ProposeMode mode) => state with { Mode = mode, Scroll = 0, Status = "" };

    private static ProposeState Scroll(ProposeState state, int lines) =>
        state with { Scroll = Math.Clamp(state.Scroll + lines, 0, Math.Max(0, ProposePicture.PageLines(state, PageWidth).Count - 1)) };

    private static string? WhyNothing(ProposeState state) => state.Chosen is null ? "Nothing is proposed." : null;
}
