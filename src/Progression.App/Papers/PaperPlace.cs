using Progression.Records.Clinic;
using Progression.Records.Storage;

namespace Progression.App.Papers;

/// <summary>Where papers are put as files. Nothing is written over another file unless that is asked for.</summary>
/// <remarks>
/// A file's name must end as its format says, and may not begin with a dot: so that what is typed into a workbook that is all an account can do
/// never becomes a file that a shell or a server reads.
/// </remarks>
public sealed record PaperPlace
{
    private PaperPlace(string? folder, bool isFixed) => (Folder, IsFixed) = (folder, isFixed);

    /// <summary>The folder for a name without one; null where the clinic has to set it first.</summary>
    public string? Folder { get; }

    /// <summary>Whether that folder is the only one: the program does not run as the person.</summary>
    public bool IsFixed { get; }

    /// <summary>The place of a folder of records.</summary>
    /// <param name="store">The folder of the records; papers lie in one of its own there unless the clinic names another.</param>
    /// <param name="clinic">What the clinic has set; null for the records of one person.</param>
    public static PaperPlace Of(string store, ClinicSettings? clinic)
    {
        ArgumentNullException.ThrowIfNull(store);
        bool isFixed = clinic?.Accounts == ClinicAccounts.Sudo;
        return new(clinic?.PapersFolder ?? (isFixed ? null : Path.Combine(store, "papers")), isFixed);
    }

    /// <summary>Writes a file.</summary>
    /// <param name="name">Its name as the person gave it; a name without a folder goes into <see cref="Folder"/>, or where the person stands.</param>
    /// <param name="paper">What is in it.</param>
    /// <param name="format">What it is.</param>
    /// <param name="over">Whether a file of that name may be written over.</param>
    /// <param name="here">The folder a name without one is taken in; null for <see cref="Folder"/>.</param>
    /// <returns>The whole path; or a problem as a sentence.</returns>
    public (string? Path, string? Problem) Put(string name, PaperMade paper, PaperFormat format, bool over = false, string? here = null)
    {
        ArgumentNullException.ThrowIfNull(name);
        ArgumentNullException.ThrowIfNull(paper);
        if (WhyNot(name, format) is { } problem)
        {
            return (null, problem);
        }

        string path = Path.GetFullPath(name, IsFixed || here is null ? Path.GetFullPath(Folder!) : here);
        try
        {
            Write(path, paper, over);
            return (path, null);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or StoreException)
        {
            return (null, fault.Message);
        }
    }

    /// <summary>A file that is to be read in.</summary>
    /// <param name="name">Its name as the person gave it; one without a folder is looked for in <see cref="Folder"/>, "~" is the person's own folder.</param>
    /// <returns>The whole path; or a problem as a sentence. Whether it is there is not looked at.</returns>
    public (string? Path, string? Problem) Find(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        string own = name.StartsWith("~/", StringComparison.Ordinal) ? Path.Combine(Environment.GetFolderPath(Environment.SpecialFolder.UserProfile), name[2..]) : name;
        return Folder is null ? (null, $"No folder for papers is set: papers_folder in {ClinicFile.Name} names it.")
            : IsFixed && Path.GetFileName(name) != name ? (null, $"Only a file name is taken here, without a folder: it is looked for in {Folder}.")
            : (Path.GetFullPath(own, Path.GetFullPath(Folder)), null);
    }

    private string? WhyNot(string name, PaperFormat format)
    {
        string file = Path.GetFileName(name);
        string ending = PaperFormats.Ending(format);
        return Folder is null ? $"No folder for papers is set: papers_folder in {ClinicFile.Name} names it."
            : IsFixed && file != name ? $"Only a file name is taken here, without a folder: it goes to {Folder}."
            : file.StartsWith('.') || !file.EndsWith(ending, StringComparison.OrdinalIgnoreCase) ? $"The name must end with {ending} and may not begin with a dot; found \"{Core.Entry.Found.Of(file)}\"."
            : null;
    }

    private void Write(string path, PaperMade paper, bool over)
    {
        string folder = Path.GetDirectoryName(path)!;
        if (folder == Path.GetFullPath(Folder!) && !Directory.Exists(folder))
        {
            Directory.CreateDirectory(folder);
        }

        // Where the program does not run as the person, they get at the file through the group of the folder.
        using NewFile file = NewFile.Begin(path, over && !IsFixed, groupReads: IsFixed);
        file.Content.Write(paper.Bytes.AsSpan());
        file.Finish();
    }
}
