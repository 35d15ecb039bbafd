namespace Progression.App.Actions;

/// <summary>How well an action fits what was typed.</summary>
public enum ActionFit
{
    /// <summary>Every word begins a word of its name or its help. Enough to be listed, not to be done unasked.</summary>
    Help,

    /// <summary>Two words or more, each a whole word of its name or its help.</summary>
    Words,

    /// <summary>Every word begins a word of its name or its hint.</summary>
    Name,

    /// <summary>It is named: by its key, its whole name or its hint.</summary>
    Whole,
}

/// <summary>An action that fits what was typed.</summary>
/// <param name="Choice">The action.</param>
/// <param name="Fit">How well.</param>
/// <param name="Points">Finer order within the fit, more first.</param>
public sealed record ActionMatch(ActionChoice Choice, ActionFit Fit, int Points);

/// <summary>Finds actions by their words; the same for the line at the foot of a screen and for line mode.</summary>
public static class ActionSearch
{
    private static readonly string[] Saving = ["save", "finish", "accept"];

    /// <summary>The actions that fit, best first; all in the order of the table when nothing is typed.</summary>
    /// <param name="choices">The actions of the present mode.</param>
    /// <param name="typed">A key, a name or words; <c>q</c> and <c>w</c> after a colon mean leave and save where nothing else does.</param>
    public static IReadOnlyList<ActionMatch> Best(IReadOnlyList<ActionChoice> choices, string typed)
    {
        ArgumentNullException.ThrowIfNull(choices);
        ArgumentNullException.ThrowIfNull(typed);
        string text = typed.Trim();
        return text.Length == 0
            ? [.. choices.Select(choice => new ActionMatch(choice, ActionFit.Help, 0))]
            : [.. choices.Select(choice => Match(choice, text)).OfType<ActionMatch>()
                .OrderByDescending(match => match.Fit).ThenByDescending(match => match.Points).ThenBy(match => match.Choice.WhyNot is not null)];
    }

    /// <summary>The one action that is meant; null where none or more than one could be, or where it is not plain enough to be done unasked.</summary>
    public static ActionChoice? Meant(IReadOnlyList<ActionMatch> best)
    {
        ArgumentNullException.ThrowIfNull(best);
        return best.Count > 0 && best[0].Fit > ActionFit.Help && (best.Count == 1 || best[0].Fit > best[1].Fit) ? best[0].Choice : null;
    }

    /// <summary>The action that a short command of one letter stands for: q to leave, w to save; null where the screen has none.</summary>
    public static ActionChoice? Short(IReadOnlyList<ActionChoice> choices, string typed)
    {
        ArgumentNullException.ThrowIfNull(choices);
        return typed switch
        {
            "q" => Back(choices),
            "w" => Saving.Select(name => choices.FirstOrDefault(choice => choice.Name == name)).FirstOrDefault(choice => choice is not null),
            _ => null,
        };
    }

    /// <summary>The way back out of the mode: the first that can be done, else the first, which says why not; null where there is none.</summary>
    public static ActionChoice? Back(IReadOnlyList<ActionChoice> choices)
    {
        ArgumentNullException.ThrowIfNull(choices);
        ActionChoice[] ways = [.. choices.Where(choice => choice.IsBack)];
        return ways.FirstOrDefault(way => way.WhyNot is null) ?? ways.FirstOrDefault();
    }

    private static ActionMatch? Match(ActionChoice choice, string text)
    {
        string plain = text.ToLowerInvariant().Replace('-', ' ');
        if (choice.Keys.Any(key => SameKey(key, text)))
        {
            return new(choice, ActionFit.Whole, 2);
        }

        if (Words(choice.Name) == plain || choice.Hint == plain)
        {
            return new(choice, ActionFit.Whole, Words(choice.Name) == plain ? 3 : 1);
        }

        string[] asked = plain.Split([' ', ','], StringSplitOptions.RemoveEmptyEntries);
        string[] named = [.. Words(choice.Name).Split(' '), .. choice.Hint.Split(' ', StringSplitOptions.RemoveEmptyEntries)];
        int name = asked.Count(word => named.Any(own => own.StartsWith(word, StringComparison.Ordinal)));
        if (name == asked.Length && plain.Length > 1)
        {
            return new(choice, ActionFit.Name, -named.Length);
        }

        string[] told = [.. named, .. choice.Help.ToLowerInvariant().Split([' ', ',', ';', ':', '.'], StringSplitOptions.RemoveEmptyEntries)];
        int whole = asked.Count(word => told.Contains(word));
        return asked.All(word => told.Any(own => own.StartsWith(word, StringComparison.Ordinal)))
            ? new(choice, asked.Length > 1 && whole == asked.Length ? ActionFit.Words : ActionFit.Help, name + whole)
            : null;
    }

    // j and J are two keys; Ctrl+S is one however it is written.
    private static bool SameKey(string key, string text) =>
        string.Equals(key, text, key.Length == 1 ? StringComparison.Ordinal : StringComparison.OrdinalIgnoreCase);

    private static string Words(string name) => name.Replace('-', ' ');
}
