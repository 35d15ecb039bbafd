using Progression.App.Actions;

namespace Progression.App.Plain;

/// <summary>
/// Line mode: the same screens and actions as in the window, by prompts and answers. A line goes in, lines come out; a fact a
/// line, and only what changed or was asked for. It knows no terminal.
/// </summary>
/// <param name="screens">The screens that are open.</param>
public sealed class PlainTalk(ScreenStack screens)
{
    /// <summary>Stands before a command where an answer is expected.</summary>
    public const char Mark = ':';

    private PlainFace? _face;
    private string _refused = "";

    /// <summary>Whether the last screen was left.</summary>
    public bool IsOver => screens.Top is null;

    /// <summary>What is said first.</summary>
    public IReadOnlyList<string> Begin() => ["Line mode. help tells how it works, end leaves.", .. Changed()];

    /// <summary>Takes a line and says what came of it.</summary>
    /// <param name="line">An answer where one is asked for, else a command; a colon in front makes it a command anywhere.</param>
    public IReadOnlyList<string> Hear(string line)
    {
        ArgumentNullException.ThrowIfNull(line);
        if (screens.Top is not { } top)
        {
            return [];
        }

        bool marked = line.TrimStart().StartsWith(Mark);
        if (top.TakesText && !marked)
        {
            Answer(line);
            return Changed();
        }

        string command = line.Trim().TrimStart(Mark).Trim();
        return marked && ActionSearch.Short(top.Choices, command) is { } meant ? Do(meant) : Obey(top, command);
    }

    /// <summary>Keeps what is unsaved and closes every screen.</summary>
    /// <returns>Whether anything was unsaved.</returns>
    public bool End()
    {
        bool unsaved = screens.IsUnsaved;
        screens.Keep();
        screens.Close();
        return unsaved;
    }

    private IReadOnlyList<string> Obey(Frame top, string command)
    {
        string[] words = command.Split(' ', 2, StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        string rest = words.Length > 1 ? words[1] : "";
        return words.FirstOrDefault() switch
        {
            null => Again(top, top.Here),
            "help" => PlainHelp.Lines(top),
            "actions" => PlainHelp.Actions(top, all: rest == "all"),
            "where" => Again(top, [.. PlainFace.Of(top).Where(), .. top.Opening]),
            "read" when top.Read(rest.ToLowerInvariant()) is { } lines => Again(top, lines),
            "go" when rest.Length > 0 && rest != "on" && top.Go(rest.ToLowerInvariant()) is { } there => Went(there),
            "set" when rest.Length > 0 => Set(top, rest),
            "key" when rest.Length > 0 => Press(rest),
            "back" when ActionSearch.Back(top.Choices) is { } way => Do(way),
            "end" => Ended(),
            _ => Find(top, command),
        };
    }

    private IReadOnlyList<string> Find(Frame top, string command)
    {
        IReadOnlyList<ActionMatch> best = ActionSearch.Best(top.Choices, command);
        return ActionSearch.Meant(best) is { } meant ? Do(meant)
            : best.Count == 0 ? Again(top, [$"Nothing here is called \"{command}\"; actions lists what can be done."])
            : [best.Count == 1 ? "Is it this?" : $"That could be {best.Count} things; say one of these:", .. best.Select(match => PlainHelp.Line(match.Choice))];
    }

    private List<string> Do(ActionChoice action)
    {
        screens.Do(action.Id);
        return Changed();
    }

    private List<string> Press(string key)
    {
        screens.Press(key, key.Length == 1 ? key : null);
        return Changed();
    }

    // An empty answer keeps what stands in the field; one that is refused does not stay there.
    private void Answer(string text)
    {
        ScreenQuestion? asked = screens.Top?.Asks;
        if (text.Trim().Length > 0)
        {
            Fill(text.Trim());
        }

        screens.Press(screens.Top?.Asks?.TakenBy ?? PlainKeys.Take, null);
        if (asked is not null && screens.Top?.Asks is { Refused.Length: > 0 } again && again.Title == asked.Title)
        {
            _refused = again.Refused;
            Fill(asked.Now);
        }
    }

    private void Fill(string text)
    {
        screens.Press(PlainKeys.Empty, null);
        screens.Paste(text);
    }

    private IReadOnlyList<string> Set(Frame top, string text)
    {
        if (!top.TakesText && top.Choices.FirstOrDefault(choice => choice.Name == "edit") is { WhyNot: null } edit)
        {
            screens.Do(edit.Id);
        }

        if (screens.Top is not { TakesText: true })
        {
            return Again(top, [top.Choices.FirstOrDefault(choice => choice.Name == "edit")?.WhyNot ?? "There is nothing to set here."]);
        }

        Answer(text);
        return Changed();
    }

    private List<string> Went(Frame there)
    {
        screens.Replace(there);
        _face = _face is null ? null : _face with { Here = [] };
        return Changed();
    }

    private IReadOnlyList<string> Ended()
    {
        End();
        return [];
    }

    private List<string> Changed()
    {
        if (screens.Top is not { } top)
        {
            return [];
        }

        PlainFace? before = _face;
        _face = PlainFace.Of(top);
        List<string> said = [.. _face.Since(before, top.Opening), .. Asked(top)];
        _refused = "";
        return said.Count > 0 ? said : ["Done; nothing here reads differently."];
    }

    private IReadOnlyList<string> Again(Frame top, IReadOnlyList<string> lines) => [.. lines.Count > 0 ? lines : ["There is nothing to read."], .. Asked(top)];

    private IEnumerable<string> Asked(Frame top) => !top.TakesText ? []
        : PlainHelp.Question((top.Asks ?? new ScreenQuestion(string.Join(" ", top.Here))) with { Refused = _refused });
}
