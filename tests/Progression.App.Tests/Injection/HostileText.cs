using System.Collections.Immutable;
using System.Globalization;

namespace Progression.App.Tests.Injection;

/// <summary>Texts that would do something to a terminal or to a reader if they reached one as they are; each has a visible "ok" before and after.</summary>
internal static class HostileText
{
    public static ImmutableArray<string> All { get; } =
    [
        .. Range(0x00, 0x1F), .. Range(0x7F, 0x9F), .. Sequences().Select(Between), .. Bidi().Select(Letter).Select(Between),
        .. Invisible().Select(Letter).Select(Between), .. Broken().Select(Between), .. Floods().Select(Between), .. Wide().Select(Between), .. Words(),
    ];

    /// <summary>A few of each kind, for paths on which each text costs a file or a process.</summary>
    public static IEnumerable<string> Some => All.Where((_, at) => at % 12 == 0).Append(Between("\e[31m")).Append(Between("\u202E")).Append(Between("\uD83D"));

    private static string Between(string text) => $"ok{text}ok";

    private static string Letter(int point) => char.ConvertFromUtf32(point);

    private static IEnumerable<string> Range(int first, int last) => Enumerable.Range(first, last - first + 1).Select(point => Between(Letter(point)));

    // Control sequences of ECMA-48 and the operating system commands that terminals commonly take.
    private static string[] Sequences() =>
    [
        "\e[31m", "\e[2J", "\e[H", "\e[10;10H", "\e[1A", "\e[K", "\e[3J", "\e[?1049h", "\e[?1049l", "\e[?25l", "\e[?1000h", "\e[?2004h", "\e[6n", "\e[c", "\e[>c",
        "\e[5i", "\e[4i", "\e[20t", "\e[21t", "\e[8;5;5t", "\e[!p", "\e[999999999C", "\e[38;2;1;2;3m", "\e[8m", "\e[7m", "\ec", "\e#8", "\e(0", "\e)0", "\e7", "\e8", "\eD", "\eM",
        "\e]0;title\a", "\e]2;title\e\\", "\e]4;1;?\a", "\e]8;;http://example.invalid\e\\link\e]8;;\e\\", "\e]52;c;b2s=\a", "\e]1337;File=:AA==\a", "\e]9;note\a", "\e]777;notify;a;b\e\\",
        "\eP$q\"p\e\\", "\eP+q544e\e\\", "\eP1$r0m\e\\", "\e_Gf=32;AAAA\e\\", "\e^private\e\\", "\eXstart\e\\", "\e[", "\e]", "\eP", "\e_", "\e",
        "\u009B31m", "\u009D0;title\u009C", "\u0090q\u009C", "\u009Fapc\u009C", "\u009Epm\u009C", "\u0098sos\u009C", "\u0085", "\r\n", "\r", "\n\n\n", "\t\t", "\b\b\b\b", "\x0E\x0F", "\x11\x13", "\x04", "\x1A",
        "\e[200~pasted\e[201~", "[31mnot one", "^[[31m", "\\e[31m", "\\u001b[31m", "%1b%5b", "&#27;[2J",
    ];

    private static IEnumerable<int> Bidi() => [0x061C, 0x200E, 0x200F, .. Enumerable.Range(0x202A, 5), .. Enumerable.Range(0x2066, 4)];

    private static IEnumerable<int> Invisible() =>
    [
        0x00AD, 0x034F, 0x115F, 0x1160, 0x17B4, 0x17B5, 0x180B, 0x180C, 0x180D, 0x180E, 0x180F, 0x200B, 0x200C, 0x200D, 0x2028, 0x2029, 0x2060, 0x2061, 0x2062, 0x2063, 0x2064, 0x206A,
        0x206F, 0x2800, 0x3164, 0xFE00, 0xFE0E, 0xFE0F, 0xFEFF, 0xFFA0, 0xFFF9, 0xFFFA, 0xFFFB, 0xFFFC, 0xFFFE, 0xFFFF, 0x1D173, 0x1BCA0, 0x110BD, 0x13430, 0xE0001, 0xE0020, 0xE0041,
        0xE007F, 0xE0100, 0xE01EF, 0xE000, 0xF8FF, 0xF0000, 0x10FFFD, 0x0378, 0x00A0, 0x1680, 0x2000, 0x200A, 0x202F, 0x205F, 0x3000,
    ];

    private static string[] Broken() => ["\uD800", "\uDBFF", "\uDC00", "\uDFFF", "\uDC00\uD800", "\uD83D", "\uDE00", "\uD83D\uD83D\uDE00", "\uFFFD"];

    private static string[] Floods() =>
    [
        "\u0301", "e\u0301\u0301\u0301\u0301", "Z" + new string('\u0335', 60), "a" + string.Concat(Enumerable.Repeat("\u0300\u0316", 40)), "\u20DD\u20DD\u20DD", "x\u0489\u0489\u0489", "\u0E49\u0E49\u0E49\u0E49",
    ];

    private static string[] Wide() =>
    [
        "漢字仮名", "ｆｕｌｌ", "ｶﾅ", "한국어", "\u1112\u1161\u11AB", "\u1100\u1100\u1161", "👍", "👍🏽", "👩‍⚕️", "👨‍👩‍👧‍👦", "🇩🇪", "🇩", "1️⃣", "❤️", "✈", "✈️", "☎︎", "§±°·", "ⅣΩα─│", "नि", "क्षि", "தமிழ்", "ไทย", "ကို", "العربية",
        "עברית", "ﷺ", "\u0600123", "𝔘𝔫𝔦", "𠀋", "ẞß", "e\u0301", "Å", "\u1F9D", "\U0001F3FB", "\U0001FAE8", "\u302E", "\u3099か\u3099", "\uA9C0", "\u0D4E", "\U00011A3A", "\u2E3A", "\u2E3B", "\uFDFD", "\u12031",
    ];

    private static string[] Words() =>
    [
        "", " ", new string(' ', 500), new string('x', 5000), new string('漢', 3000), string.Concat(Enumerable.Repeat("e\u0301", 2000)), string.Concat(Enumerable.Repeat("ok ", 3000)),
        string.Concat(Enumerable.Repeat("\e[31m", 800)), "{0} {1:N}", "%s%n%x", "\"'`$(ls);|&<>", "../../etc/passwd", "-rf", "--help", "null", "~", "*", "!!", "? : - [", "{a: &b *b}", "\u2026\u2026", "12e99", "-0", string.Create(CultureInfo.InvariantCulture, $"{double.MaxValue}"),
    ];
}
