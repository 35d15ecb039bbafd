using Progression.App.Forms;

namespace Progression.App.Logs;

/// <summary>The form of a session at one moment. It knows no terminal and writes nothing; every action gives another state.</summary>
public sealed record LogState
{
    private LogState()
    {
    }

    /// <summary>What the form reads.</summary>
    public required LogDesk Desk { get; init; }

    /// <summary>The lines.</summary>
    public required Form Form { get; init; }

    /// <summary>What the keys mean.</summary>
    public LogMode Mode { get; init; }

    /// <summary>The mode to go back to from the help page.</summary>
    public LogMode HelpFor { get; init; }

    /// <summary>Lines of the help page that are scrolled past.</summary>
    public int Scroll { get; init; }

    /// <summary>Whether a second session of the day was said to be meant.</summary>
    public bool IsAgain { get; init; }

    /// <summary>The last thing told to the person.</summary>
    public string Status { get; init; } = "";

    /// <summary>The form of a session today, the caret where typing begins: at the current, or without stim at the pain.</summary>
    /// <param name="desk">What the form reads.</param>
    public static LogState Open(LogDesk desk)
    {
        ArgumentNullException.ThrowIfNull(desk);
        Form form = Form.Of(LogLines.Of(desk, desk.Today));
        return new() { Desk = desk, Form = form.To(form.TextOf(LogLines.Contractions) == "0" ? LogLines.PainBefore : LogLines.Peak) };
    }
}
