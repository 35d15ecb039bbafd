using System.Collections.Immutable;
using System.Globalization;
using Progression.App.Actions;
using Progression.Core.Plans;
using Progression.Core.Reassessing;
using Progression.Records.Caseload;

namespace Progression.App.Propose;

/// <summary>What was chosen on a proposal before it was accepted, as texts on disk, and back.</summary>
public static class ProposeDraft
{
    /// <summary>Names it among the forms of a case.</summary>
    public const string FormName = "proposal";

    private const string Taken = "taken ";
    private const string Reason = "reason";

    /// <summary>What was chosen; null when nothing was.</summary>
    public static KeptForm? Of(ProposeState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        return state.Taken.IsEmpty && state.Reason is null ? null : new KeptForm(state.Desk.Code, FormName)
        {
            Fields = state.Desk.Changes.Where(change => state.Taken.Contains(change.Address)).Select(change => (Name: NameOf(change), Text: state.Text(change.Address, change.New)))
                .Concat(state.Reason is { } reason ? [(Name: Reason, Text: reason.Text)] : Array.Empty<(string Name, string Text)>())
                .ToImmutableSortedDictionary(field => field.Name, field => field.Text, StringComparer.Ordinal),
        };
    }

    /// <summary>The proposal with the choices as they were left; a change that is now another one is not taken.</summary>
    /// <param name="open">The proposal at its start.</param>
    /// <param name="kept">What was kept; null for nothing.</param>
    public static ProposeState Restored(ProposeState open, KeptForm? kept)
    {
        ArgumentNullException.ThrowIfNull(open);
        if (kept is null)
        {
            return open;
        }

        ImmutableHashSet<CellAddress> taken =
        [
            .. open.Desk.Changes.Where(change => kept.Fields.GetValueOrDefault(NameOf(change)) == open.Text(change.Address, change.New) && Taking.WhyNot(open, change) is null).Select(change => change.Address),
        ];
        bool asked = kept.Fields.TryGetValue(Reason, out string? reason);
        return open with
        {
            // What only makes sense together is taken together, also where its partner is another change now.
            Taken = [.. taken.Where(cell => Group(open, cell).All(taken.Contains))],
            Mode = asked ? ProposeMode.Reason : ProposeMode.List,
            Reason = asked ? LineEntry.Of(reason!) : null,
            Status = "Your choices are as they were left.",
        };
    }

    private static IEnumerable<CellAddress> Group(ProposeState state, CellAddress cell) =>
        Taking.Group(state.Desk.Changes, state.Desk.Changes.First(change => change.Address == cell)).Select(change => change.Address);

    private static string NameOf(ProposedChange change) => string.Create(CultureInfo.InvariantCulture, $"{Taken}{change.Address.Lane} {change.Address.Week}");
}
