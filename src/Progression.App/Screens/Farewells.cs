using Progression.Core.Entry;
using Progression.Core.People;

namespace Progression.App.Screens;

/// <summary>What is told after the last screen is gone: the last word on each case, none where all is saved.</summary>
public sealed class Farewells
{
    private readonly SortedDictionary<string, string> _byCase = new(StringComparer.Ordinal);

    /// <summary>The last word on a case; null takes an earlier one back.</summary>
    public void Tell(CaseCode code, string? told)
    {
        ArgumentNullException.ThrowIfNull(code);
        _byCase.Remove(code.Text);
        if (told is not null)
        {
            _byCase[code.Text] = told;
        }
    }

    /// <summary>Writes them, by case.</summary>
    public void Write(TextWriter messages)
    {
        ArgumentNullException.ThrowIfNull(messages);
        foreach (string farewell in _byCase.Values)
        {
            messages.WriteLine(SafeText.OneLine(farewell));
        }
    }
}
