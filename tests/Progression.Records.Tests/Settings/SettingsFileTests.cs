using Progression.Records.Settings;
using Progression.Records.Yaml;

namespace Progression.Records.Tests.Settings;

public sealed class SettingsFileTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("progression-settings-").FullName;

    [Fact]
    public void Without_a_file_the_usual_settings_hold()
    {
        (PersonalSettings settings, var problems) = File("none").Read();
        Assert.Equal(PersonalSettings.Usual, settings);
        Assert.Empty(problems);
    }

    [Fact]
    public void What_is_written_is_read_again()
    {
        PersonalSettings set = new()
        {
            Colours = ColourChoice.Full,
            Background = BackgroundChoice.Dark,
            Symbols = SymbolChoice.SevenBit,
            Mouse = true,
            BlankAfter = 0,
            EndAfter = 480,
            LineMode = true,
        };
        SettingsFile file = File(Path.Combine("deep", "settings.yaml"));
        file.Write(set);
        Assert.Equal((set, 0), (file.Read().Settings, file.Read().Problems.Length));
        file.Write(PersonalSettings.Usual);
        Assert.Equal(PersonalSettings.Usual, file.Read().Settings);
    }

    [Theory]
    [InlineData("colours: pink", "colours", "auto, none, sixteen, full")]
    [InlineData("blank_after: 481", "blank_after", "from 0 to 480 min")]
    [InlineData("blank_after: -1", "blank_after", "from 0 to 480 min")]
    [InlineData("mouse: maybe", "mouse", "yes, no")]
    [InlineData("colour: none", "colour", "colours")]
    public void A_wrong_line_is_told_and_nothing_of_the_file_holds(string line, string field, string allowed)
    {
        SettingsFile file = File("wrong.yaml");
        System.IO.File.WriteAllText(file.Path, "symbols: unicode\n" + line + "\n");
        (PersonalSettings settings, var problems) = file.Read();
        FileProblem problem = Assert.Single(problems);
        Assert.Equal((PersonalSettings.Usual, 2, field), (settings, problem.Line, problem.Field));
        Assert.Contains(allowed, problem.ToString(), StringComparison.Ordinal);
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    private SettingsFile File(string name) => new(Path.Combine(_folder, name));
}
