using Progression.App.Actions;
using Progression.App.Pictures;
using Progression.Core.Reassessing;

namespace Progression.App.Propose;

/// <summary>The proposal in words: the verdict, then a change a time.</summary>
internal static class ProposeAloud
{
    public static ScreenAloud<ProposeState> Words { get; } = new() { Opening = Opening, Here = Here, Read = Read, Asks = Asks, Go = Go };

    private static IEnumerable<string> Opening(ProposeState state) => state.Mode != ProposeMode.List ? [] :
    [
        VerdictText.Heading(state.Desk.Verdict, state.Desk.Library),
        .. VerdictText.Missing(state.Desk.Verdict).Select(missing => $"Missing: {missing}"),
        .. VerdictText.OpenFlags(state.Desk.Flags) is { } flags ? [flags] : Array.Empty<string>(),
    ];

    private static IEnumerable<string>? Here(ProposeState state) => state switch
    {
        { Mode: ProposeMode.Help } => null,
        { Mode: ProposeMode.Reason } => [],
        { Mode: ProposeMode.Why or ProposeMode.Verdict or ProposeMode.Outlook } => RowWords.Of(ProposePicture.PageLines(state, RowWords.Unbroken)),
        { Chosen: { } change } => [Line(state, change), $"Because: {change.Reason}", $"How sure: {change.Confidence}"],
        _ => RowWords.Of(ProposePicture.Nothing(state, RowWords.Unbroken)),
    };

    private static IEnumerable<string>? Read(ProposeState state, string part) => part.Length > 0 ? null
        : state.Mode != ProposeMode.List ? Here(state)
        : [.. Opening(state), .. state.Desk.Changes.IsEmpty ? Here(state) ?? [] : state.Desk.Changes.Select(change => Line(state, change))];

    private static ScreenQuestion? Asks(ProposeState state) => state.Reason is { } line
        ? new ScreenQuestion("Nothing is taken. Why does the plan stay as it is") { Now = line.Text, Allowed = "A few words; they are kept with the plan." }
        : null;

    private static ProposeState? Go(ProposeState state, string words) =>
        state.Mode == ProposeMode.List && SpokenNames.Fitting(words, state.Desk.Changes.Select(change => state.Place(change.Address))) is { Count: > 0 } found ? state.To(found[0]) : null;

    private static string Line(ProposeState state, ProposedChange change)
    {
        string taken = change.IsPinned ? "set by hand and stays" : state.Taken.Contains(change.Address) ? "taken" : "not taken";
        string with = change.With is { } partner ? $", together with {state.Place(partner)}" : "";
        return $"Change {state.Desk.Changes.IndexOf(change) + 1} of {state.Desk.Changes.Length}, {taken}: {state.Place(change.Address)}{with}: "
            + $"{state.Text(change.Address, change.Old)} to {state.Text(change.Address, change.New)}.";
    }
}
