using System.Collections.Frozen;
using Progression.Core.Entry;

namespace Progression.App.Pictures;

/// <summary>
/// Our own symbols in seven-bit letters, one column for one column, for terminals whose locale is not UTF-8. The layout
/// therefore never changes with the alphabet.
/// </summary>
public static class SevenBit
{
    private static readonly FrozenDictionary<char, char> Letters = new Dictionary<char, char>
    {
        ['─'] = '-',
        ['│'] = '|',
        ['┼'] = '+',
        ['┬'] = '+',
        ['┴'] = '+',
        ['…'] = '~',
        ['▁'] = '_',
        ['▂'] = ',',
        ['▃'] = '-',
        ['▄'] = '~',
        ['▅'] = '=',
        ['▆'] = '+',
        ['▇'] = '*',
        ['█'] = '#',
        ['▔'] = '"',
        ['└'] = '+',
        ['░'] = ',',
        ['▒'] = ':',
        ['╌'] = '=',
        ['●'] = 'o',
        ['◇'] = 'x',
        ['▲'] = 'A',
        ['°'] = 'o',
        ['·'] = '.',
        ['×'] = 'x',
        ['→'] = '>',
        ['←'] = '<',
        ['↑'] = '^',
        ['↓'] = 'v',
        ['▸'] = '>',
        ['▼'] = 'V',
        ['±'] = '~',
        ['≥'] = '>',
        ['≤'] = '<',
        ['≈'] = '~',
        ['–'] = '-',
        ['—'] = '-',
        ['‘'] = '\'',
        ['’'] = '\'',
        ['“'] = '"',
        ['”'] = '"',
        ['µ'] = 'u',
        ['μ'] = 'u',
    }.ToFrozenDictionary();

    /// <summary>The same columns in seven bits: our symbols by their stand-in, anything else as <c>?</c>.</summary>
    /// <param name="safe">Text that is safe for a terminal.</param>
    public static string Of(string safe)
    {
        ArgumentNullException.ThrowIfNull(safe);
        return SafeText.Ascii(string.Concat(safe.Select(letter => Letters.GetValueOrDefault(letter, letter))));
    }
}
