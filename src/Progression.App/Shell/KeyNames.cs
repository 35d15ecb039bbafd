using Terminal.Gui.Drivers;
using Terminal.Gui.Input;

namespace Progression.App.Shell;

/// <summary>Names of keys as the action tables write them.</summary>
internal static class KeyNames
{
    private const KeyCode Modifiers = KeyCode.ShiftMask | KeyCode.CtrlMask | KeyCode.AltMask;

    /// <summary>The name, such as <c>Ctrl+S</c>, <c>Shift+Tab</c>, <c>PgUp</c> or <c>?</c>.</summary>
    public static string Of(Key key)
    {
        string prefix = (key.IsCtrl ? "Ctrl+" : "") + (key.IsAlt ? "Alt+" : "");
        if (Special(key.KeyCode & ~Modifiers) is { } special)
        {
            return prefix + (key.IsShift ? "Shift+" : "") + special;
        }
        string letter = key.NoCtrl.NoAlt.AsRune.ToString();
        return prefix.Length > 0 ? prefix + letter.ToUpperInvariant() : letter;
    }

    /// <summary>What the key types; null for a key that types nothing.</summary>
    public static string? TextOf(Key key) =>
        key.IsCtrl || key.IsAlt || (Special(key.KeyCode & ~Modifiers) is { } special && special != "Space") ? null
        : key.AsRune.Value >= ' ' && key.AsRune.Value != 0x7F ? key.AsRune.ToString()
        : null;

    private static string? Special(KeyCode code) => code switch
    {
        KeyCode.CursorUp => "Up",
        KeyCode.CursorDown => "Down",
        KeyCode.CursorLeft => "Left",
        KeyCode.CursorRight => "Right",
        KeyCode.Home => "Home",
        KeyCode.End => "End",
        KeyCode.PageUp => "PgUp",
        KeyCode.PageDown => "PgDn",
        KeyCode.Tab => "Tab",
        KeyCode.Enter => "Enter",
        KeyCode.Esc => "Esc",
        KeyCode.Backspace => "Backspace",
        KeyCode.Delete => "Delete",
        KeyCode.Insert => "Insert",
        KeyCode.Space => "Space",
        >= KeyCode.F1 and <= KeyCode.F12 => $"F{code - KeyCode.F1 + 1}",
        _ => null,
    };
}
