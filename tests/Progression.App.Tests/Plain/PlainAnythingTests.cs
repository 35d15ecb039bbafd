using Progression.App.Actions;

namespace Progression.App.Tests.Plain;

/// <summary>Whatever is said in whatever order, line mode goes on, always answers and loses nothing.</summary>
public sealed class PlainAnythingTests
{
    private const int Lines = 600;
    private static readonly string[] Typed = ["", "95", "4 5 6", "y", "no", "tue", "2026-11-25", ":back", ":finish", ":read", "zebra \u001B[31m", "go week 3", "go flexion", "read", "where", "set 70", "12x3", ":w", "read week 2", "read findings"];

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void It_always_answers(int seed)
    {
        Random random = new(seed);
        using TalkOnAStore talk = TalkOnAStore.Demo();
        HashSet<string> seen = [];
        List<string> trail = [];
        for (int at = 0; at < Lines; at++)
        {
            Frame top = talk.Screens.Top!;
            seen.Add(top.Where.Screen);
            string[] names = [.. top.Choices.Where(choice => !choice.Name.StartsWith("quit", StringComparison.Ordinal) && choice.Name != "end").Select(choice => $":{choice.Name.Replace('-', ' ')}")];
            string line = random.Next(2) == 0 ? Typed[random.Next(Typed.Length)] : names[random.Next(names.Length)];
            bool leaves = top.Choices.Any(choice => choice.Name == "quit") && line is (":back" or ":q");
            if (!leaves)
            {
                trail.Add(line);
                Assert.True(talk.Say(line).Count > 0, $"{top.Where.Screen}: {line}");
            }
        }

        Assert.True(seen.Count >= 5, $"{string.Join(", ", seen)}; {string.Join(" | ", trail.TakeLast(60))}");
    }

    [Fact]
    public void Every_screen_reads_itself_tells_its_actions_and_explains_line_mode()
    {
        using TalkOnAStore talk = TalkOnAStore.Demo();
        foreach (string door in new[] { "assess", "log", "compare", "course", "red flags", "what if", "library" })
        {
            Assert.NotEmpty(talk.Say(door));
            Assert.NotEqual("Grid", talk.Screens.Top!.Where.Screen);
            Assert.True(talk.Say(":read").Count > 3, door);
            Assert.Contains(talk.Say(":actions"), line => line.Contains(" Key ", StringComparison.Ordinal));
            Assert.StartsWith("Line mode:", talk.Say(":help")[0], StringComparison.Ordinal);
            talk.Say(":back");
            Assert.Equal("Grid", talk.Screens.Top!.Where.Screen);
        }
    }
}
