using System.Collections.Immutable;

namespace Progression.Core.Reviews;

/// <summary>All that was done about the reviews of a case's plan, oldest first. It only grows.</summary>
/// <param name="Acts">What was done.</param>
public sealed record ReviewRecord(ImmutableArray<ReviewAct> Acts)
{
    /// <summary>Nothing was done yet.</summary>
    public static ReviewRecord Empty { get; } = new([]);

    /// <summary>The record with something more.</summary>
    public ReviewRecord With(ReviewAct act) => new(Acts.Add(act));

    /// <summary>Whether this is the other record with nothing changed, and perhaps more after it.</summary>
    public bool Extends(ReviewRecord before)
    {
        ArgumentNullException.ThrowIfNull(before);
        return Acts.Length >= before.Acts.Length && Acts.Take(before.Acts.Length).SequenceEqual(before.Acts);
    }

    /// <summary>The latest signature; null when there is none.</summary>
    public ReviewAct? LastSigned => Acts.LastOrDefault(act => act.Step == ReviewStep.Signed);

    /// <summary>The request that nobody has answered and that was not taken back; null when there is none.</summary>
    public ReviewAct? OpenRequest => Deciding is { Step: ReviewStep.Requested } request ? request : null;

    /// <summary>The return after which nobody has asked again; null when there is none.</summary>
    public ReviewAct? OpenReturn => Deciding is { Step: ReviewStep.Returned } back ? back : null;

    /// <summary>The acts after the latest signature; all when there is none.</summary>
    public IEnumerable<ReviewAct> SinceSigned => Acts.Skip(LastSigned is { } signed ? Acts.LastIndexOf(signed) + 1 : 0);

    /// <summary>The comments that were made since the plan was signed last, oldest first, each with who made it. Those made with that signature belong to them.</summary>
    public IEnumerable<(ReviewAct Act, ReviewComment Comment)> Comments =>
        from act in LastSigned is { } signed ? SinceSigned.Prepend(signed) : Acts
        from comment in act.Comments
        select (act, comment);

    // A comment changes nothing about where the review stands.
    private ReviewAct? Deciding => Acts.LastOrDefault(act => act.Step != ReviewStep.Commented);

    /// <inheritdoc/>
    public bool Equals(ReviewRecord? other) => other is not null && Acts.SequenceEqual(other.Acts);

    /// <inheritdoc/>
    public override int GetHashCode() => Acts.Length;
}
