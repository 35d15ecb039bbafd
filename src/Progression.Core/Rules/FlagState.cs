using System.Collections.Immutable;
using Progression.Core.Findings;
using Progression.Core.Library;
using Progression.Core.People;

namespace Progression.Core.Rules;

/// <summary>A red flag as it stands for a case on a day.</summary>
public sealed record FlagState
{
    /// <summary>The flag.</summary>
    public required RedFlag Flag { get; init; }

    /// <summary>
    /// Holds when a visit showed it and no later visit answered no; does not hold when the latest visit answered no; not known when it was not asked.
    /// </summary>
    public required Truth Raised { get; init; }

    /// <summary>The visit at which it first showed; null when it does not show.</summary>
    public DateOnly? Since { get; init; }

    /// <summary>What was answered or measured at the visit that last showed it, or at the latest visit when none did.</summary>
    public ImmutableArray<Input> Inputs { get; init; } = [];

    /// <summary>The note that closed what was last seen of it; null for none.</summary>
    public FlagNote? ClosedBy { get; init; }

    /// <summary>The score of the items answered; null where the flag has none, does not show, or no item was answered.</summary>
    public ClotScore? Score { get; init; }

    /// <summary>Whether it shows and nobody has closed it.</summary>
    public bool IsOpen => Raised == Truth.Holds && ClosedBy is null;

    /// <summary>How it ends, in words.</summary>
    public string HowToClose => $"A clinician closes it with a note by name (flag {Flag.Id}); a later visit that answers no ends it too.";

    /// <summary>The judgement that last showed it; null when it does not show.</summary>
    internal Judged? Shown { get; init; }

    /// <summary>The judgement of the latest visit by itself.</summary>
    internal Judged? Latest { get; init; }

    /// <summary>
    /// The flag as a condition of the ladder: it holds while it is open. What a note has closed no longer holds, but a later visit must ask again.
    /// </summary>
    internal Judged Open()
    {
        Judged told = IsOpen ? Shown! : Latest!;
        Truth truth = IsOpen ? Truth.Holds : told.Truth == Truth.Holds ? Truth.DoesNotHold : told.Truth;
        return told with
        {
            Truth = truth,
            Inputs = ClosedBy is { } note ? [.. told.Inputs, new Input($"Closed by {note.By}, {LadderFacts.Day(note.On)}", note.Text)] : told.Inputs,
            Missing = truth == Truth.NotKnown ? told.Missing : null,
        };
    }
}
