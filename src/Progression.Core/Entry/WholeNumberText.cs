using System.Globalization;

namespace Progression.Core.Entry;

/// <summary>Reads a plain count: digits, and a minus only to say that the number is out of range.</summary>
public static class WholeNumberText
{
    /// <summary>Reads a count in a range.</summary>
    /// <param name="field">The field as the person knows it.</param>
    /// <param name="text">The text as typed; null or blank is a missing value, which is refused.</param>
    /// <param name="least">The least accepted count, included.</param>
    /// <param name="most">The greatest accepted count, included.</param>
    public static Entered<WholeNumber> Read(string field, string? text, int least, int most)
    {
        string trimmed = (text ?? "").Trim(' ');
        string allowed = $"a whole number from {least.ToString(CultureInfo.InvariantCulture)} to {most.ToString(CultureInfo.InvariantCulture)}";
        string digits = trimmed.StartsWith('-') ? trimmed[1..] : trimmed;
        if (digits.Length is 0 or > 10 || !digits.All(char.IsAsciiDigit))
        {
            string wrong = trimmed.Length == 0 ? "The number is missing." : "This is not a whole number.";
            return Entered<WholeNumber>.Bad(new Problem(field, wrong, allowed, Found.Of(text ?? "")));
        }

        long count = long.Parse(trimmed, CultureInfo.InvariantCulture);
        return count < least || count > most
            ? Entered<WholeNumber>.Bad(new Problem(field, "The number is out of range.", allowed, Found.Of(text ?? "")))
            : Entered<WholeNumber>.Good(new WholeNumber((int)count));
    }
}

/// <summary>A count that was read; holds an integer where a class is asked for.</summary>
/// <param name="Count">The count.</param>
public sealed record WholeNumber(int Count);
