using System.Collections.Immutable;

namespace Progression.Core.Documents;

/// <summary>Something to be printed or kept, before anybody has decided how it looks. The same document becomes text, Markdown or HTML.</summary>
/// <param name="Title">Its title.</param>
/// <param name="Mark">What stands on every page: who signed, or that nobody did.</param>
/// <param name="IsSigned">Whether the mark is a signature that holds; what is not signed says so in large letters.</param>
/// <param name="Blocks">What it says, from top to bottom.</param>
/// <param name="Language">The language it is in, as a tag of RFC 5646: "en".</param>
public sealed record Document(string Title, string Mark, bool IsSigned, ImmutableArray<Block> Blocks, string Language)
{
    /// <summary>What tells one page from that of another case where pages are parted: the code. Null for nothing.</summary>
    public string? About { get; init; }
}
