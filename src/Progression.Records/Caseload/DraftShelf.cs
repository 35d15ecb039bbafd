using System.Text;
using System.Text.Json;
using Progression.Core.People;
using Progression.Records.Json;
using Progression.Records.Plans;
using Progression.Records.Storage;

namespace Progression.Records.Caseload;

/// <summary>
/// Keeps unsaved work on disk, one file for each case and account, so that a dropped line loses nothing. A file is written aside, flushed to disk and
/// then renamed over the old one, so that there is always a whole one.
/// </summary>
/// <param name="folder">The store's folder; drafts lie in a folder of their own in it.</param>
/// <param name="account">The account, as the system knows it: digits.</param>
public sealed class DraftShelf(string folder, string account)
{
    /// <summary>The name of the folder in the store's folder.</summary>
    public const string FolderName = "drafts";

    private const string Schema = "kept-draft/1";

    private string Folder => Path.Combine(folder, FolderName);

    /// <summary>Whether any account keeps a draft here.</summary>
    public bool Any => Directory.Exists(Folder) && Directory.EnumerateFiles(Folder).Any();

    /// <summary>Whether there is a draft of a case, readable or not.</summary>
    public bool Has(CaseCode code) => File.Exists(PathOf(code));

    /// <summary>The draft of a case; null when there is none.</summary>
    /// <exception cref="FormatException">There is one, but it cannot be read; it is left where it is.</exception>
    public KeptDraft? Find(CaseCode code)
    {
        string path = PathOf(code);
        return File.Exists(path) ? JsonReading.Of(File.ReadAllText(path), "draft", Read) : null;
    }

    /// <summary>Keeps a draft in place of an earlier one.</summary>
    /// <exception cref="IOException">It could not be written; the earlier one is still there.</exception>
    public void Keep(KeptDraft draft)
    {
        ArgumentNullException.ThrowIfNull(draft);
        Directory.CreateDirectory(Folder);
        string path = PathOf(draft.Plan.Code);
        string aside = path + ".new";
        FileStreamOptions options = new() { Mode = FileMode.Create, Access = FileAccess.Write };
        if (!OperatingSystem.IsWindows())
        {
            options.UnixCreateMode = UnixFileMode.UserRead | UnixFileMode.UserWrite;
        }

        using (FileStream file = new(aside, options))
        {
            byte[] text = Encoding.UTF8.GetBytes(JsonFields.Text(JsonFields.Of(
                ("schema", Schema),
                ("based_on", draft.BasedOn is { } based ? JsonFields.Of(("revision", based.Revision), ("hash", based.Hash)) : null),
                ("plan", PlanJson.Node(draft.Plan)))));
            file.Write(text);
            file.Flush(flushToDisk: true);
        }

        File.Move(aside, path, overwrite: true);
    }

    /// <summary>Drops the draft of a case; without one it does nothing.</summary>
    public void Drop(CaseCode code)
    {
        if (Directory.Exists(Folder))
        {
            File.Delete(PathOf(code));
        }
    }

    /// <summary>Puts a draft that cannot be read out of the way of the next one; it stays on disk beside it.</summary>
    public void SetAside(CaseCode code) => File.Move(PathOf(code), PathOf(code) + ".unreadable", overwrite: true);

    private string PathOf(CaseCode code) => Path.Combine(Folder, $"{code.Text}.{account}.json");

    private static KeptDraft Read(JsonElement json) => JsonReading.Text(json, "schema") != Schema
        ? throw new ArgumentException("It is of another form.")
        : new KeptDraft(
            PlanJsonReader.Read(json.GetProperty("plan")),
            JsonReading.Part(json, "based_on", based => new RevisionRef(JsonReading.RequiredWhole(based, "revision"), JsonReading.Required(based, "hash"))));
}
