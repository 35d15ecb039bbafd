using System.Collections.Immutable;
using System.Text;
using Progression.Core.People;
using Progression.Records.Storage;

namespace Progression.Records.Caseload;

/// <summary>
/// Keeps unsaved work on disk, a file for each case, kind of work and session, so that a dropped line loses nothing and two sessions of one account do not
/// write over each other. A file is written aside, flushed to disk and then renamed over the old one, so that there is always a whole one.
/// </summary>
/// <param name="folder">The store's folder; drafts lie in a folder of their own in it.</param>
/// <param name="session">The session that keeps them.</param>
/// <param name="clock">The clock that dates them.</param>
public sealed class DraftShelf(string folder, DraftSession session, TimeProvider clock)
{
    /// <summary>The name of the folder in the store's folder.</summary>
    public const string FolderName = "drafts";

    private const string PlanKind = "plan";
    private const string NoCase = "_new"; // No case code begins with this.
    private const string Unreadable = ".unreadable";
    private const UnixFileMode ForItsOwner = UnixFileMode.UserRead | UnixFileMode.UserWrite;

    private const UnixFileMode FolderOfOne = ForItsOwner | UnixFileMode.UserExecute;

    // Every account of the group keeps its own here and can take away nobody else's.
    private const UnixFileMode FolderOfMany = FolderOfOne | UnixFileMode.SetGroup | UnixFileMode.StickyBit
        | UnixFileMode.GroupRead | UnixFileMode.GroupWrite | UnixFileMode.GroupExecute;

    /// <summary>The session that keeps drafts here.</summary>
    public DraftSession Session => session;

    private string Folder => Path.Combine(folder, FolderName);

    /// <summary>Whether any account keeps a draft here.</summary>
    public bool Any => Directory.Exists(Folder) && Directory.EnumerateFiles(Folder).Any();

    /// <summary>Whether this account keeps a draft of a case, readable or not.</summary>
    public bool Has(CaseCode code)
    {
        ArgumentNullException.ThrowIfNull(code);
        return Files(code.Text).Any();
    }

    /// <summary>The codes of all cases of which this account keeps a draft, readable or not.</summary>
    public IReadOnlySet<string> Codes() => Files("*").Select(file => Path.GetFileName(file).Split('.')[0]).Where(code => code != NoCase).ToHashSet(StringComparer.Ordinal);

    /// <summary>The shelf for one opening of a case: what was kept before it is found, never written over.</summary>
    public DraftShelf Opened() => new(folder, session with { Opening = clock.GetTimestamp() }, clock);

    /// <summary>What this account kept of a case before this opening and no other running process works on. What cannot be read is set aside.</summary>
    /// <param name="code">The case; null for forms that make one.</param>
    /// <exception cref="IOException">The folder cannot be read.</exception>
    public FoundDrafts Find(CaseCode? code)
    {
        ImmutableArray<FoundDraft>.Builder drafts = ImmutableArray.CreateBuilder<FoundDraft>();
        ImmutableArray<string>.Builder unreadable = ImmutableArray.CreateBuilder<string>();
        int inUse = 0;
        foreach (string path in Files(code?.Text ?? NoCase).Order(StringComparer.Ordinal).ToList())
        {
            string keeper = Path.GetFileName(path).Split('.')[2];
            if (keeper == session.Id || session.IsOtherAndRuns(keeper))
            {
                inUse += keeper == session.Id ? 0 : 1;
                continue;
            }

            try
            {
                drafts.Add(DraftJson.Read(File.ReadAllText(path), Path.GetFileName(path)));
            }
            catch (FormatException fault)
            {
                File.Move(path, path + Unreadable, overwrite: true);
                unreadable.Add($"A kept draft cannot be read and was left aside: {fault.Message}");
            }
        }

        return new([.. drafts.OrderByDescending(draft => draft.At)], unreadable.ToImmutable(), inUse);
    }

    /// <summary>Keeps unsaved changes to a plan in place of earlier ones of this session.</summary>
    /// <exception cref="IOException">They could not be written; the earlier ones are still there.</exception>
    public void Keep(KeptDraft draft)
    {
        ArgumentNullException.ThrowIfNull(draft);
        Write(NameOf(draft.Plan.Code, PlanKind), DraftJson.Of(draft, session, clock.GetUtcNow()));
    }

    /// <summary>Keeps a form in place of what this session kept of it before.</summary>
    /// <exception cref="IOException">It could not be written; what was kept before is still there.</exception>
    public void Keep(KeptForm form)
    {
        ArgumentNullException.ThrowIfNull(form);
        Write(NameOf(form.Code, form.Form), DraftJson.Of(form, session, clock.GetUtcNow()));
    }

    /// <summary>Drops this session's changes to the plan of a case; without any it does nothing.</summary>
    public void Drop(CaseCode code) => Remove(NameOf(code, PlanKind));

    /// <summary>Drops this session's form of a case; without one it does nothing.</summary>
    /// <param name="code">The case; null for a form that makes one.</param>
    /// <param name="form">Which form.</param>
    public void Drop(CaseCode? code, string form) => Remove(NameOf(code, form));

    /// <summary>Drops what was found, because it was taken over or nobody wants it.</summary>
    public void Discard(FoundDraft found)
    {
        ArgumentNullException.ThrowIfNull(found);
        Remove(found.File);
    }

    private IEnumerable<string> Files(string code) =>
        Directory.Exists(Folder) ? Directory.EnumerateFiles(Folder, $"{code}.{session.Account}.*.json") : [];

    private string NameOf(CaseCode? code, string kind) => $"{code?.Text ?? NoCase}.{session.Account}.{session.Id}.{kind}.json";

    private void Write(string name, string text)
    {
        MakeFolder();
        string path = Path.Combine(Folder, name);
        string aside = path + ".new";
        FileStreamOptions options = new() { Mode = FileMode.Create, Access = FileAccess.Write };
        if (!OperatingSystem.IsWindows())
        {
            options.UnixCreateMode = ForItsOwner;
        }

        using (FileStream file = new(aside, options))
        {
            file.Write(Encoding.UTF8.GetBytes(text));
            file.Flush(flushToDisk: true);
        }

        File.Move(aside, path, overwrite: true);
        NativeFile.SyncFolder(Folder); // The text is on disk already; where a folder cannot be flushed the name follows a little later.
    }

    private void MakeFolder()
    {
        if (Directory.Exists(Folder))
        {
            return;
        }

        if (OperatingSystem.IsWindows())
        {
            Directory.CreateDirectory(Folder);
            return;
        }

        Directory.CreateDirectory(Folder, FolderOfOne);
        if ((File.GetUnixFileMode(folder) & UnixFileMode.GroupWrite) != 0)
        {
            File.SetUnixFileMode(Folder, FolderOfMany);
        }
    }

    private void Remove(string name)
    {
        if (Directory.Exists(Folder))
        {
            File.Delete(Path.Combine(Folder, name));
        }
    }
}
