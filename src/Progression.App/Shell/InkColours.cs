using Progression.App.Pictures;
using Terminal.Gui.Drawing;
using Attribute = Terminal.Gui.Drawing.Attribute;

namespace Progression.App.Shell;

/// <summary>Inks as terminal attributes, on the terminal's own background.</summary>
internal static class InkColours
{
    public static Attribute Of(Ink ink, TerminalColours colours)
    {
        Color hue = colours switch
        {
            TerminalColours.None => Color.None,
            TerminalColours.Sixteen => Named(ink),
            _ => Exact(ink),
        };
        return new Attribute(hue, Color.None, StyleOf(ink));
    }

    /// <summary>The style alone must tell apart what matters most, for terminals and people without colour.</summary>
    private static TextStyle StyleOf(Ink ink) => ink switch
    {
        Ink.Chosen => TextStyle.Reverse,
        Ink.Strong or Ink.Stop or Ink.Today => TextStyle.Bold,
        Ink.Field => TextStyle.Underline,
        Ink.Quiet => TextStyle.Faint,
        _ => TextStyle.None,
    };

    // The darker half of the sixteen: the bright half is unreadable on a white background.
    private static Color Named(Ink ink) => ink switch
    {
        Ink.Milestone => Color.Magenta,
        Ink.Stim => Color.Cyan,
        Ink.Work => Color.Green,
        Ink.Stop => Color.Red,
        Ink.Warning => Color.Red,
        Ink.Note => Color.Cyan,
        _ => Color.None,
    };

    // Each has a contrast of at least 4.5 to 1 against black and against white (WCAG 2, 1.4.3); a test computes it.
    private static Color Exact(Ink ink) => ink switch
    {
        Ink.Milestone => new Color(163, 83, 195),
        Ink.Stim => new Color(0, 129, 148),
        Ink.Work => new Color(22, 135, 57),
        Ink.Stop => new Color(229, 33, 41),
        Ink.Warning => new Color(176, 98, 0),
        Ink.Note => new Color(61, 116, 203),
        _ => Color.None,
    };
}
