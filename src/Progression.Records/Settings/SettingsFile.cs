using System.Collections.Immutable;
using System.Text;
using Progression.Records.Yaml;

namespace Progression.Records.Settings;

/// <summary>The file of a person's settings: strict YAML, every field optional. A file that is wrong sets nothing and is left as it is.</summary>
/// <param name="path">Where it is; it need not be there.</param>
public sealed class SettingsFile(string path)
{
    private static readonly NumberRange Minutes = new(0, PersonalSettings.MostMinutes, "min");

    /// <summary>Where it is.</summary>
    public string Path { get; } = path;

    /// <summary>The settings, and what is wrong with the file; the usual ones where it is wrong or not there.</summary>
    public (PersonalSettings Settings, ImmutableArray<FileProblem> Problems) Read()
    {
        if (!File.Exists(Path))
        {
            return (PersonalSettings.Usual, []);
        }

        YamlDocument document = YamlDocument.Read(Path);
        if (document.Root is null)
        {
            return (PersonalSettings.Usual, document.Problems);
        }

        FileProblems problems = new(Path);
        Fields fields = new(document.Root, "", problems);
        PersonalSettings usual = PersonalSettings.Usual;
        PersonalSettings settings = new()
        {
            Colours = fields.OneOf<ColourChoice>("colours", Need.Optional) ?? usual.Colours,
            Background = fields.OneOf<BackgroundChoice>("background", Need.Optional) ?? usual.Background,
            Symbols = fields.OneOf<SymbolChoice>("symbols", Need.Optional) ?? usual.Symbols,
            Mouse = fields.YesNo("mouse", Need.Optional) ?? usual.Mouse,
            BlankAfter = fields.Whole("blank_after", Need.Optional, Minutes) ?? usual.BlankAfter,
            EndAfter = fields.Whole("end_after", Need.Optional, Minutes) ?? usual.EndAfter,
            LineMode = fields.YesNo("line_mode", Need.Optional) ?? usual.LineMode,
        };
        fields.Done();
        return problems.Count == 0 ? (settings, []) : (usual, problems.InOrder());
    }

    /// <summary>Writes the settings in place of what was there: aside first, then renamed, so that there is always a whole file.</summary>
    /// <exception cref="IOException">It could not be written; what was there stays.</exception>
    public void Write(PersonalSettings settings)
    {
        ArgumentNullException.ThrowIfNull(settings);
        Directory.CreateDirectory(System.IO.Path.GetDirectoryName(System.IO.Path.GetFullPath(Path))!);
        string aside = Path + ".new";
        File.WriteAllText(aside, Text(settings), new UTF8Encoding(encoderShouldEmitUTF8Identifier: false));
        File.Move(aside, Path, overwrite: true);
    }

    /// <summary>The text of the file.</summary>
    public static string Text(PersonalSettings settings)
    {
        ArgumentNullException.ThrowIfNull(settings);
        return $"""
            # Settings of Progression for one person. Every line may be left out.
            colours: {EnumWords.Of(settings.Colours)}           # {Words<ColourChoice>()}; NO_COLOR has the same effect as none
            background: {EnumWords.Of(settings.Background)}      # {Words<BackgroundChoice>()}
            symbols: {EnumWords.Of(settings.Symbols)}           # {Words<SymbolChoice>()}
            mouse: {YesNo(settings.Mouse)}             # whether the wheel moves the cursor
            blank_after: {settings.BlankAfter}       # minutes without a key until the screen is blanked; 0 for never
            end_after: {settings.EndAfter}         # minutes without a key until the session ends, drafts kept; 0 for never
            line_mode: {YesNo(settings.LineMode)}         # whether the workbook opens in line mode

            """.ReplaceLineEndings("\n");
    }

    private static string Words<T>()
        where T : struct, Enum => string.Join(", ", EnumWords.All<T>());

    private static string YesNo(bool value) => value ? "yes" : "no";
}
