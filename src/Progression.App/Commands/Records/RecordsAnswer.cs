using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using System.Text.Json.Nodes;
using Progression.Records.Storage;

namespace Progression.App.Commands.Records;

/// <summary>What a command on the records as a whole came to. What does not belong to it is null.</summary>
/// <param name="Did">The command's word.</param>
/// <param name="Folder">The folder of the records.</param>
/// <param name="Said">The outcome in a sentence.</param>
internal sealed record RecordsAnswer(string Did, string Folder, string Said)
{
    public int? Cases { get; init; }

    public long? Entries { get; init; }

    /// <summary>Number of the last entry; 0 for none.</summary>
    public long? Last { get; init; }

    public long? Bytes { get; init; }

    public string? Head { get; init; }

    public string? File { get; init; }

    public string? Sha256 { get; init; }

    public long? TakenOver { get; init; }

    public long? LeftOut { get; init; }

    public long? AlreadyHere { get; init; }

    public string? SetAside { get; init; }

    /// <summary>What is damaged; empty when nothing is known to be.</summary>
    public ImmutableArray<string> Damage { get; init; } = [];

    /// <summary>Where entries are missing and a repair wrote that down.</summary>
    public ImmutableArray<string> Gaps { get; init; } = [];

    /// <summary>Whether it was done and nothing is damaged.</summary>
    public bool IsGood { get; init; } = true;

    /// <summary>With what a status tells.</summary>
    public RecordsAnswer With(StoreStatus status) => this with
    {
        Cases = status.Cases,
        Entries = status.Entries,
        Last = status.Last,
        Bytes = status.Bytes,
        Head = status.HeadHash,
        Damage = status.Damage,
        IsGood = IsGood && status.Damage.IsEmpty,
    };

    /// <summary>As lines.</summary>
    public string Text()
    {
        StringBuilder text = new();
        text.Append(Said);
        Line("Records", Folder);
        Line("Cases", Cases is int cases ? cases.ToString("N0", CultureInfo.InvariantCulture) : null);
        Line("Entries", Number(Entries));
        Line("Last number", Last == Entries ? null : Number(Last));
        Line("Bytes", Number(Bytes));
        Line("Head", Head);
        Line("File", File);
        Line("SHA-256", Sha256);
        Line("Kept of what is newer", Number(TakenOver));
        Line("Left out", Number(LeftOut));
        Line("Here already", Number(AlreadyHere));
        Line("Files as they were", SetAside);
        foreach (string damage in Damage)
        {
            Line("Damage", damage);
        }

        foreach (string gap in Gaps)
        {
            Line("Known gap", gap);
        }

        return text.ToString();

        void Line(string name, string? value)
        {
            if (value is not null)
            {
                text.Append(CultureInfo.InvariantCulture, $"\n  {name}: {value}");
            }
        }
    }

    /// <summary>As JSON, described in shared/schema.</summary>
    public JsonObject Json() => new()
    {
        ["schema"] = "records/1",
        ["did"] = Did,
        ["good"] = IsGood,
        ["said"] = Said,
        ["folder"] = Folder,
        ["cases"] = Cases,
        ["entries"] = Entries,
        ["last"] = Last,
        ["bytes"] = Bytes,
        ["head"] = Head,
        ["file"] = File,
        ["sha256"] = Sha256,
        ["taken_over"] = TakenOver,
        ["left_out"] = LeftOut,
        ["already_here"] = AlreadyHere,
        ["set_aside"] = SetAside,
        ["damage"] = new JsonArray([.. Damage.Select(one => JsonValue.Create(one))]),
        ["gaps"] = new JsonArray([.. Gaps.Select(one => JsonValue.Create(one))]),
    };

    private static string? Number(long? number) => number?.ToString("N0", CultureInfo.InvariantCulture);
}
