namespace Progression.App.Shell;

/// <summary>Control sequences (ECMA-48 and the usual private modes) that bring a terminal back after a screen.</summary>
internal static class TerminalReset
{
    /// <summary>Mouse reporting off, in all its forms; the person's terminal keeps its own selection of text.</summary>
    public const string MouseOff = "\e[?1000l\e[?1002l\e[?1003l\e[?1006l\e[?1015l";

    /// <summary>Buttons and wheel reported, in a form that knows wide windows; moves of the pointer are not.</summary>
    public const string WheelOn = "\e[?1000h\e[?1006h";

    /// <summary>The present screen emptied: a window that has grown may otherwise keep lines of it when the main screen comes back.</summary>
    public const string Blank = "\e[H\e[2J";

    /// <summary>Everything: mouse and paste modes off, plain attributes, main screen, cursor shown in its own shape.</summary>
    public const string Everything = MouseOff + "\e[?2004l\e[?1l\e>\e[0m\e[?1049l\e[0 q\e[?25h";
}
