using System.Collections.Immutable;

namespace Progression.Records.Library;

/// <summary>One entry of a library as its file writes it, for showing.</summary>
/// <param name="Kind">What it is, in the singular: "limit", "rung", "regimen", "exercise", "milestone", "screening question", "measure", "red flag", "prior".</param>
/// <param name="Id">Its id; unique within its kind only.</param>
/// <param name="Fields">
/// Every field with its key in the file; a dot leads into a group ("start.sets") or a list ("checklist.1"). Fields that are not given are left out, except that a field a
/// publication leaves open says "open".
/// </param>
public sealed record LibraryCard(string Kind, string Id, ImmutableArray<LibraryCardField> Fields)
{
    /// <summary>The title or question.</summary>
    public string Title => this["title"] ?? this["question"] ?? Id;

    /// <summary>How well it is founded, in the words of the file.</summary>
    public string Standing => this["standing"]!;

    /// <summary>The text of a field; null where there is none.</summary>
    public string? this[string key] => Fields.FirstOrDefault(field => field.Key == key)?.Text;
}

/// <summary>One field of a card.</summary>
/// <param name="Key">Its key in the file.</param>
/// <param name="Text">Its value as the file writes it.</param>
public sealed record LibraryCardField(string Key, string Text);
