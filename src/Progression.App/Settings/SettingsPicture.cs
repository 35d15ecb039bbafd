using Progression.App.Pictures;

namespace Progression.App.Settings;

/// <summary>Draws the settings: a line each, below them what the chosen one does and where all are kept.</summary>
public static class SettingsPicture
{
    private const int Title = 26;

    /// <summary>The picture of a state.</summary>
    public static Picture Draw(SettingsState state, PictureSize size)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(size);
        PictureSize room = ScreenSheet.Room(size);
        Picture body = state.Mode == SettingsMode.Help
            ? ScrolledText.Of([.. HelpLines.Select(line => PictureRow.Of(line, line.StartsWith(' ') ? Ink.Plain : Ink.Strong))], state.Scroll, room)
            : List(state, room);
        return ScreenSheet.Of(SettingsScreen.Where(state), body, (state.Status, SettingsActions.Table.HintLine(state, size.Width)), size);
    }

    internal static IReadOnlyList<string> HelpLines { get; } =
    [
        .. SettingsActions.Table.HelpPage(nameof(SettingsMode.List)),
        "What is set here is yours alone and holds at once. The clinic's own figures are in its library.",
    ];

    private static Picture List(SettingsState state, PictureSize room) => new(
    [
        PictureRow.Empty,
        .. SettingRow.All.Select((row, at) => Row(state, row, at == state.Index)),
        PictureRow.Empty,
        .. TextLines.Wrapped(state.Chosen.Told, room.Width),
        PictureRow.Empty,
        .. TextLines.Wrapped($"Kept in {state.File}", room.Width, Ink.Quiet),
    ], new CaretAt(0, 1 + state.Index));

    private static PictureRow Row(SettingsState state, SettingRow row, bool isChosen) => new(
    [
        new(TextFit.Exactly((isChosen ? "> " : "  ") + row.Title, Title), isChosen ? Ink.Strong : Ink.Plain),
        new($" {row.Value(state.Settings)} ", isChosen ? Ink.Chosen : Ink.Field),
    ]);
}
