using System.Collections.Immutable;
using Progression.Core.People;

namespace Progression.Records.Caseload;

/// <summary>A form left half typed, kept beside the store as the texts that stood in it.</summary>
/// <param name="Code">The case; null for a form that makes one.</param>
/// <param name="Form">Which form: small letters and hyphens.</param>
public sealed record KeptForm(CaseCode? Code, string Form)
{
    /// <summary>The texts by the id of their line: what was typed, not what stood there before.</summary>
    public ImmutableSortedDictionary<string, string> Fields { get; init; } = ImmutableSortedDictionary.Create<string, string>(StringComparer.Ordinal);

    /// <summary>The id of the line with the caret; null for the first.</summary>
    public string? At { get; init; }

    /// <summary>What else the form needs to be put together again, by names of its own.</summary>
    public ImmutableSortedDictionary<string, string> Further { get; init; } = ImmutableSortedDictionary.Create<string, string>(StringComparer.Ordinal);

    /// <summary>Whether another one holds the same texts.</summary>
    public bool IsSame(KeptForm? other) => other is not null && (Code, Form, At) == (other.Code, other.Form, other.At) && Fields.SequenceEqual(other.Fields) && Further.SequenceEqual(other.Further);
}
