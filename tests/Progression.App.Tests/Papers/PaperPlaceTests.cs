using System.Runtime.Versioning;
using Progression.App.Papers;
using Progression.Core.Clinic;
using Progression.Records.Clinic;

namespace Progression.App.Tests.Papers;

[SupportedOSPlatform("linux")]
public sealed class PaperPlaceTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("papers").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void A_name_alone_goes_into_the_folder_of_papers_beside_the_records()
    {
        (string? path, string? problem) = PaperPlace.Of(_folder, null).Put("LARK-03-home-sheet.txt", PaperMade.Of("Bend\n"), PaperFormat.Text);

        Assert.Null(problem);
        Assert.Equal(Path.Combine(_folder, "papers", "LARK-03-home-sheet.txt"), path);
        Assert.Equal("Bend\n", File.ReadAllText(path!));
        Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(path!));
    }

    [Fact]
    public void Nothing_is_written_over_unless_it_is_asked_for()
    {
        PaperPlace place = PaperPlace.Of(_folder, null);
        string path = place.Put("week.txt", PaperMade.Of("first"), PaperFormat.Text).Path!;

        Assert.Contains("is there already", place.Put("week.txt", PaperMade.Of("second"), PaperFormat.Text).Problem, StringComparison.Ordinal);
        Assert.Equal("first", File.ReadAllText(path));
        Assert.Null(place.Put("week.txt", PaperMade.Of("third"), PaperFormat.Text, over: true).Problem);
        Assert.Equal("third", File.ReadAllText(path));
    }

    [Theory]
    [InlineData(".bashrc")]
    [InlineData("authorized_keys")]
    [InlineData(".hidden.txt")]
    [InlineData("week.html")]
    [InlineData("")]
    public void A_name_that_a_shell_or_a_server_could_read_is_refused(string name)
    {
        Assert.Contains("must end with .txt", PaperPlace.Of(_folder, null).Put(name, PaperMade.Of("x"), PaperFormat.Text).Problem, StringComparison.Ordinal);
        Assert.Empty(Directory.EnumerateFileSystemEntries(_folder));
    }

    [Fact]
    public void Where_the_program_is_another_account_only_names_in_the_clinics_folder_are_taken()
    {
        ClinicSettings clinic = new() { Accounts = ClinicAccounts.Sudo, Roles = [(ClinicRole.Therapist, "t")] };
        Assert.Contains("papers_folder in clinic.yaml", PaperPlace.Of(_folder, clinic).Put("a.txt", PaperMade.Of("x"), PaperFormat.Text).Problem, StringComparison.Ordinal);

        PaperPlace place = PaperPlace.Of(_folder, clinic with { PapersFolder = Path.Combine(_folder, "out") });
        Assert.Contains("Only a file name is taken here", place.Put("../a.txt", PaperMade.Of("x"), PaperFormat.Text).Problem, StringComparison.Ordinal);
        Assert.Contains("Only a file name is taken here", place.Put(Path.Combine(_folder, "a.txt"), PaperMade.Of("x"), PaperFormat.Text).Problem, StringComparison.Ordinal);
        (string? path, _) = place.Put("a.txt", PaperMade.Of("x"), PaperFormat.Text, here: "/");
        Assert.Equal(Path.Combine(_folder, "out", "a.txt"), path);
        Assert.True(File.GetUnixFileMode(path!).HasFlag(UnixFileMode.GroupRead));
        // Even when asked to: what is there may be another person's.
        Assert.Contains("is there already", place.Put("a.txt", PaperMade.Of("y"), PaperFormat.Text, over: true).Problem, StringComparison.Ordinal);
    }

    [Fact]
    public void A_folder_that_is_not_there_is_a_sentence() =>
        Assert.Contains("is not there", PaperPlace.Of(_folder, null).Put(Path.Combine(_folder, "nowhere", "a.txt"), PaperMade.Of("x"), PaperFormat.Text).Problem, StringComparison.Ordinal);
}
