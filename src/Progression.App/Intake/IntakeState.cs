using Progression.App.Forms;

namespace Progression.App.Intake;

/// <summary>The form of a case at one moment. It knows no terminal and writes nothing; every action gives another state.</summary>
public sealed record IntakeState
{
    private IntakeState()
    {
    }

    /// <summary>What the form reads.</summary>
    public required IntakeDesk Desk { get; init; }

    /// <summary>The lines.</summary>
    public required Form Form { get; init; }

    /// <summary>What the keys mean.</summary>
    public IntakeMode Mode { get; init; }

    /// <summary>The mode to go back to from the help page.</summary>
    public IntakeMode HelpFor { get; init; }

    /// <summary>Lines of the help page that are scrolled past.</summary>
    public int Scroll { get; init; }

    /// <summary>The regimen under the cursor in <see cref="IntakeMode.Regimens"/>, from 0.</summary>
    public int Index { get; init; }

    /// <summary>The last thing told to the person.</summary>
    public string Status { get; init; } = "";

    /// <summary>The form of a new case, or of one that is saved.</summary>
    public static IntakeState Open(IntakeDesk desk)
    {
        ArgumentNullException.ThrowIfNull(desk);
        return new() { Desk = desk, Form = Form.Of(IntakeLines.Of(desk)) };
    }
}
