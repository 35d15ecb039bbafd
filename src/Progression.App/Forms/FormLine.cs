using Progression.App.Actions;

namespace Progression.App.Forms;

/// <summary>One line of a form: a name, a field, a unit.</summary>
/// <param name="Id">Its permanent id within the form.</param>
/// <param name="Group">The heading under which it stands.</param>
/// <param name="Title">Its name.</param>
public sealed record FormLine(string Id, string Group, string Title)
{
    private readonly string _given = "";

    /// <summary>Shown behind the field: a unit symbol or the kind of answer; empty for none.</summary>
    public string Unit { get; init; } = "";

    /// <summary>Whether it takes words: the field reaches to the end of the line, and nothing stands beside it.</summary>
    public bool IsText { get; init; }

    /// <summary>Whether the line is computed and shown only; the caret passes it by.</summary>
    public bool IsShownOnly { get; init; }

    /// <summary>What stood in the field when the form was opened: a value taken over, or what was planned. It is in the field from then on.</summary>
    public string Given
    {
        get => _given;
        init => (_given, Entry) = (value, LineEntry.Of(value));
    }

    /// <summary>What stands in the field.</summary>
    public LineEntry Entry { get; init; } = LineEntry.Empty;

    /// <summary>The text without the spaces around it; empty for nothing.</summary>
    public string Text => Entry.Text.Trim(' ');

    /// <summary>Whether the text is another than the one given.</summary>
    public bool IsTouched => Text != Given.Trim(' ');
}
