namespace Progression.Core.People;

/// <summary>The code of a case: never a name. 2 to 24 characters, capital letters, digits and hyphens, starting with a letter or digit.</summary>
public sealed record CaseCode
{
    private CaseCode(string text) => Text = text;

    /// <summary>Fewest and most characters.</summary>
    public const string Allowed = "2 to 24 capital letters, digits and hyphens, starting with a letter or digit";

    /// <summary>The code.</summary>
    public string Text { get; }

    /// <summary>The code in a text, small letters raised; null when the text is not a code.</summary>
    public static CaseCode? Parse(string text)
    {
        string upper = text.Trim().ToUpperInvariant();
        bool good = upper.Length is >= 2 and <= 24 && upper[0] != '-' && upper.All(c => char.IsAsciiLetterUpper(c) || char.IsAsciiDigit(c) || c == '-');
        return good ? new CaseCode(upper) : null;
    }

    /// <inheritdoc/>
    public override string ToString() => Text;
}
