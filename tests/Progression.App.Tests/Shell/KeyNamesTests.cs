using Progression.App.Shell;
using Terminal.Gui.Input;

namespace Progression.App.Tests.Shell;

[Collection("terminal library")]
public sealed class KeyNamesTests
{
    public static TheoryData<Key, string, string?> Keys => new()
    {
        { Key.CursorUp, "Up", null },
        { Key.PageDown, "PgDn", null },
        { Key.F1, "F1", null },
        { Key.F12, "F12", null },
        { Key.Tab, "Tab", null },
        { Key.Tab.WithShift, "Shift+Tab", null },
        { Key.S.WithCtrl, "Ctrl+S", null },
        { Key.Esc, "Esc", null },
        { Key.J, "j", "j" },
        { Key.J.WithShift, "J", "J" },
        { new Key('?'), "?", "?" },
        { Key.Space, "Space", " " },
        { Key.Backspace, "Backspace", null },
        { new Key('é'), "é", "é" },
        { Key.X.WithAlt, "Alt+X", null },
    };

    [Theory]
    [MemberData(nameof(Keys))]
    public void Keys_have_the_names_the_tables_write(Key key, string name, string? text)
    {
        Assert.Equal(name, KeyNames.Of(key));
        Assert.Equal(text, KeyNames.TextOf(key));
    }
}
