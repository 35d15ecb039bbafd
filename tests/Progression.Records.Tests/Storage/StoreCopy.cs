using Progression.Records.Storage;

namespace Progression.Records.Tests.Storage;

/// <summary>A store in a folder of its own whose files a test may spoil, with everything it was told.</summary>
internal sealed class StoreCopy : IDisposable
{
    private readonly TempFolder _folder = new();

    public StoreCopy() => Store = new LiteDbPlanStore(Options);

    public StoreOptions Options => new(_folder.Path, Sample.Fields) { Notify = Notices.Add };

    public LiteDbPlanStore Store { get; }

    public List<StoreNotice> Notices { get; } = [];

    public string Journal => File("plans.journal");

    public string Index => File("plans.db");

    public string Mark => File("plans.mark");

    public string Torn => File("plans.journal.torn");

    public IEnumerable<StoreNoticeKind> Kinds => Notices.Select(notice => notice.Kind).Distinct().Order();

    public string File(string name) => _folder.File(name);

    /// <summary>Another store with copies of these files as they are now.</summary>
    public StoreCopy Twin()
    {
        StoreCopy twin = new();
        foreach (string file in Directory.EnumerateFiles(_folder.Path))
        {
            System.IO.File.Copy(file, twin.File(Path.GetFileName(file)), overwrite: true);
        }

        return twin;
    }

    public void Shorten(long length)
    {
        using FileStream journal = new(Journal, FileMode.Open);
        journal.SetLength(length);
    }

    public static void Flip(string file, long at, byte mask = 1)
    {
        using FileStream stream = new(file, FileMode.Open);
        stream.Position = at;
        int old = stream.ReadByte();
        stream.Position = at;
        stream.WriteByte((byte)(old ^ mask));
    }

    public void Dispose() => _folder.Dispose();
}
