namespace Progression.App.Tests;

/// <summary>Compares text with a committed file. A missing file fails; SNAPSHOT_UPDATE=1 writes what is to be reviewed in the diff.</summary>
internal static class Snapshot
{
    // Looked up from the built tests, because a build with mapped paths does not know where its sources are.
    private static readonly string Folder = Path.Combine(Root(), "tests", "Progression.App.Tests", "Snapshots");

    public static void Match(string text, string name) => MatchFile(text, Path.Combine(Folder, name + ".txt"));

    /// <summary>Compares with a file that stands elsewhere in the project, such as a page of the documentation.</summary>
    public static void MatchPage(string text, string path) => MatchFile(text, Path.Combine(Root(), path));

    private static void MatchFile(string text, string file)
    {
        string now = text.TrimEnd('\n') + "\n";
        if (Environment.GetEnvironmentVariable("SNAPSHOT_UPDATE") == "1")
        {
            Directory.CreateDirectory(Path.GetDirectoryName(file)!);
            File.WriteAllText(file, now);
        }
        Assert.True(File.Exists(file), $"There is no {file}; SNAPSHOT_UPDATE=1 writes it.");
        Assert.Equal(File.ReadAllText(file), now);
    }

    private static string Root()
    {
        DirectoryInfo? folder = new(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Progression.sln")))
        {
            folder = folder.Parent;
        }
        return folder?.FullName ?? throw new DirectoryNotFoundException("The tests do not lie in the project's folder.");
    }
}
