using Progression.App.Pictures;
using Progression.Records.Settings;
using Terminal.Gui.Drawing;
using Attribute = Terminal.Gui.Drawing.Attribute;

namespace Progression.App.Shell;

/// <summary>Inks as terminal attributes, on the terminal's own background.</summary>
internal static class InkColours
{
    public static Attribute Of(Ink ink, TerminalColours colours, BackgroundChoice background = BackgroundChoice.Either)
    {
        Color hue = (colours, background) switch
        {
            (TerminalColours.None, _) => Color.None,
            (TerminalColours.Sixteen, BackgroundChoice.Dark) => NamedOnDark(ink),
            (TerminalColours.Sixteen, BackgroundChoice.Light) => NamedOnLight(ink),
            (TerminalColours.Sixteen, _) => Named(ink),
            (_, BackgroundChoice.Dark) => ExactOnDark(ink),
            (_, BackgroundChoice.Light) => ExactOnLight(ink),
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

    private static Color NamedOnDark(Ink ink) => ink switch
    {
        Ink.Milestone => Color.BrightMagenta,
        Ink.Stim => Color.BrightCyan,
        Ink.Work => Color.BrightGreen,
        Ink.Stop => Color.BrightRed,
        Ink.Warning => Color.BrightYellow,
        Ink.Note => Color.BrightCyan,
        _ => Color.None,
    };

    private static Color NamedOnLight(Ink ink) => ink switch
    {
        Ink.Milestone => Color.Magenta,
        Ink.Stim or Ink.Note => Color.Blue,
        Ink.Work => Color.Green,
        Ink.Stop or Ink.Warning => Color.Red,
        _ => Color.None,
    };

    // On the one background that was set there is room for more contrast: at least 7 to 1 (WCAG 2, 1.4.6); a test computes it.
    private static Color ExactOnDark(Ink ink) => ink switch
    {
        Ink.Milestone => new Color(214, 160, 232),
        Ink.Stim => new Color(90, 200, 214),
        Ink.Work => new Color(120, 200, 130),
        Ink.Stop => new Color(255, 125, 120),
        Ink.Warning => new Color(230, 170, 60),
        Ink.Note => new Color(140, 180, 255),
        _ => Color.None,
    };

    private static Color ExactOnLight(Ink ink) => ink switch
    {
        Ink.Milestone => new Color(110, 40, 140),
        Ink.Stim => new Color(0, 85, 100),
        Ink.Work => new Color(10, 90, 35),
        Ink.Stop => new Color(165, 10, 20),
        Ink.Warning => new Color(120, 65, 0),
        Ink.Note => new Color(30, 70, 150),
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
