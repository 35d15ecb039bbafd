using Progression.App.Actions;

namespace Progression.App.Plain;

/// <summary>How line mode is used, and what can be done now: from the same table as the keys.</summary>
internal static class PlainHelp
{
    private static readonly string[] Ways =
    [
        "Line mode: type a line, then Enter. What has changed is said, a fact a line.",
        "read: all that is here. In the grid also: read week 4, read lane flexion, read findings.",
        "An empty line: what is under the cursor, once more. where: the screen and what is unsaved.",
        "go: to a place by its name, as in go flexion week 4, go EXAMPLE-07.",
        "set: type into what is under the cursor, as in set 95.",
        "actions: what can be done now. actions all: also what cannot, and why.",
        "Any action by its name, by its key or by its words: why, save, next finding, Ctrl+S.",
        "Where a question is asked, the line is the answer; an empty one keeps what stands there.",
        "There a colon in front makes it a command, as in :back, :read, :help, :empty.",
        "key: a key by its name, as in key Down.",
        "back: out of this. end: leave the program; what is unsaved is kept as a draft.",
    ];

    /// <summary>How line mode is used, and every action of the present mode.</summary>
    public static IReadOnlyList<string> Lines(Frame top) => [.. Ways, .. Actions(top, all: true)];

    /// <summary>The actions, each with its key and what it does.</summary>
    /// <param name="top">The screen in use.</param>
    /// <param name="all">Whether those that cannot be done now are told too, with the reason.</param>
    public static IReadOnlyList<string> Actions(Frame top, bool all) =>
        [.. top.Choices.Where(choice => (all || choice.WhyNot is null) && !OfTheWindow.Contains(choice.Name) && (!top.TakesText || choice.Name is not ("left" or "right"))).Select(Line)];

    /// <summary>An action.</summary>
    public static string Line(ActionChoice choice) => $"{choice.Name.Replace('-', ' ')}: {choice.Help}. Key {choice.Keys[0]}." + (choice.WhyNot is { } why ? $" Not now: {why}" : "");

    /// <summary>A question: what is asked, what is allowed, what it was, what stands there.</summary>
    public static IEnumerable<string> Question(ScreenQuestion question)
    {
        if (question.Refused.Length > 0)
        {
            yield return $"Not taken. {question.Refused}";
        }

        yield return $"{question.Title}? {(question.Refused.Length > 0 ? "" : question.Allowed)}".TrimEnd();
        if (question.Last.Length > 0)
        {
            yield return $"Last: {question.Last}.";
        }

        if (question.Now.Length > 0)
        {
            yield return $"Now: {question.Now}.";
        }
    }

    // What only moves a picture or a caret has no use where nothing is drawn.
    private static readonly HashSet<string> OfTheWindow =
        ["repaint", "help", "find-action", "rub-out", "delete", "start", "end", "zoom", "answer", "answer-on", "answer-back", "read-on", "read-back", "on", "back-up", "page-on", "page-back", "top"];
}
