using Progression.App.Plain;

namespace Progression.App.Tests.Injection;

/// <summary>Line mode on a case full of hostile texts, answered with hostile texts: printable text and line feeds, nothing else.</summary>
public sealed class InjectionInLineModeTests : IDisposable
{
    private const int AtOnce = 30;
    private const int Few = 3;
    private readonly HostileCase _case = new();

    public void Dispose() => _case.Dispose();

    [Fact]
    public void Everything_said_is_harmless()
    {
        foreach (string[] texts in HostileText.All.Where(text => !text.Contains('\n', StringComparison.Ordinal) && text.Length < PlainSession.Longest).Chunk(AtOnce))
        {
            string[] answers = [.. texts.SelectMany(text => new[] { text, ":back", ":back" })];
            string[] lines =
            [
                "read", "read findings", "where", "why", "back", .. Rooms.SelectMany(room => (string[])[room, ":read", ":actions all", .. texts.Take(Few), ":read", ":back", ":back"]),
                .. texts.Select(text => $"set {text}"), .. texts.Select(text => $"go {text}"), .. texts.Select(text => $"key {text}"), .. texts, .. answers, "end",
            ];
            string script = string.Join('\n', lines);
            foreach (bool sevenBit in new[] { false, true })
            {
                using StringWriter said = new();
                using StringReader typed = new(script);
                PlainSession.Run(HostileCase.Screens(_case.Saved(string.Join(' ', texts))), typed, said, sevenBit);
                Forbidden.NoneInLines(said.ToString(), $"line mode, seven bits {sevenBit}");
                Assert.True(!sevenBit || said.ToString().All(char.IsAscii));
            }
        }
    }

    private static string[] Rooms => ["assess", "log", "compare", "course", "red flags", "what if", "library", "data", "screening"];
}
