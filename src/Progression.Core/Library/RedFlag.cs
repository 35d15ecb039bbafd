using System.Collections.Immutable;

namespace Progression.Core.Library;

/// <summary>A red flag: what is asked, and what is gone through when it shows. The program asks and refers; it does not diagnose.</summary>
public sealed record RedFlag
{
    /// <summary>The line with which every checklist ends; it is added by the reader, so no file can lose it.</summary>
    public const string ProtocolLine = "Follow the clinic's protocol.";

    /// <summary>The permanent id: "clot-leg".</summary>
    public required string Id { get; init; }

    /// <summary>What it is, as it reads after "red flag:".</summary>
    public required string Title { get; init; }

    /// <summary>Its questions in the order in which they are asked, the one that covers all first; empty for a flag that readings alone raise.</summary>
    public required ImmutableArray<FlagQuestion> Questions { get; init; }

    /// <summary>What to look at and settle; the last line is <see cref="ProtocolLine"/>.</summary>
    public required ImmutableArray<string> Checklist { get; init; }

    /// <summary>The score that its questions add up to; null where there is none.</summary>
    public FlagScore? Score { get; init; }

    /// <summary>Where it comes from.</summary>
    public required Source Source { get; init; }

    /// <summary>The questions that raise the flag, the one that covers all included.</summary>
    public IEnumerable<FlagQuestion> Raising => Questions.Where(question => question.Raises);
}

/// <summary>A fixed question of a red flag. Its answer stands among the signs of an assessment under the id.</summary>
/// <param name="Id">The id of the sign; two flags may share one.</param>
/// <param name="Text">The question, answered yes, no or unknown; yes is the answer that matters.</param>
/// <param name="FromDay">Post-op day from which a yes counts; null for always.</param>
public sealed record FlagQuestion(string Id, string Text, int? FromDay)
{
    /// <summary>Whether a no to it is a no to the whole flag.</summary>
    public bool CoversAll { get; init; }

    /// <summary>Whether a yes raises the flag; otherwise it only counts for the score.</summary>
    public bool Raises { get; init; } = true;

    /// <summary>What a yes adds to the score; null when it is not part of it.</summary>
    public double? Points { get; init; }

    /// <summary>Last post-op day on which it is true of everyone, because of the operation; null for none.</summary>
    public int? TrueUntilDay { get; init; }
}

/// <summary>A published score in two levels.</summary>
/// <param name="Title">Its name.</param>
/// <param name="LikelyFrom">Points from which it says "likely"; under them "unlikely".</param>
public sealed record FlagScore(string Title, double LikelyFrom);
