using System.Diagnostics;
using System.Text;
using Microsoft.Data.Sqlite;
using Progression.Records.Storage;

namespace Progression.Benchmarks;

/// <summary>The store beside the least that could do the same, in turn, in one run: a bare flushed append of the same bytes, and a query of a plain table.</summary>
internal static class StoreRatios
{
    private const int Cases = 1000;
    private const int Waiting = 50;
    private const int Rounds = 60;

    public static void Print(TextWriter output)
    {
        string folder = Directory.CreateTempSubdirectory("ratios-").FullName;
        try
        {
            LiteDbPlanStore store = Filled(Path.Combine(folder, "store"));
            Saves(store, Path.Combine(folder, "bare"), output);
            using SqliteConnection table = Table(store, Path.Combine(folder, "table.db"));
            Queues(store, table, output);
        }
        finally
        {
            SqliteConnection.ClearAllPools();
            Directory.Delete(folder, recursive: true);
        }
    }

    private static LiteDbPlanStore Filled(string folder)
    {
        LiteDbPlanStore store = new(new StoreOptions(folder, (_, body) => body.TryGetProperty(CaseRow.Waiting, out var at)
            ? new Dictionary<string, string> { [CaseRow.Waiting] = at.GetString()! }
            : []));
        for (int number = 0; number < Cases; number++)
        {
            string body = number < Waiting ? $$"""{"waiting":"2026-11-{{(number % 28) + 1:D2}}"}""" : """{"asked":false}""";
            Save(store, $"K-{number:D4}", RecordKind.Review, null, body);
        }

        return store;
    }

    private static void Saves(LiteDbPlanStore store, string bare, TextWriter output)
    {
        using FileStream file = new(bare, FileMode.Create, FileAccess.Write, FileShare.None, 1);
        string text = new('x', 4000);
        RevisionRef? head = null;
        (List<double> ours, List<double> theirs) = ([], []);
        for (int round = 0; round < Rounds; round++)
        {
            string body = $$"""{"n":{{round}},"text":"{{text}}"}""";
            byte[] line = Encoding.UTF8.GetBytes(body + new string('.', 500));
            ours.Add(Time(() => head = Save(store, "K-SAVE", RecordKind.Plan, head, body)));
            theirs.Add(Time(() =>
            {
                file.Write(line);
                file.Flush(flushToDisk: true);
            }));
        }

        Tell(output, "save of a revision of 4 kB", ours, "bare flushed append of the same bytes", theirs);
    }

    private static void Queues(LiteDbPlanStore store, SqliteConnection table, TextWriter output)
    {
        (List<double> ours, List<double> theirs) = ([], []);
        for (int round = 0; round < Rounds; round++)
        {
            ours.Add(Time(() => Require(store.Waiting(row => (row.CaseCode, row.Fields[CaseRow.Waiting])).Cases.Length)));
            theirs.Add(Time(() =>
            {
                using SqliteConnection opened = new(table.ConnectionString);
                opened.Open();
                using SqliteCommand query = opened.CreateCommand();
                query.CommandText = "select code, waiting from cases where waiting is not null order by waiting";
                using SqliteDataReader reader = query.ExecuteReader();
                List<(string, string)> rows = [];
                while (reader.Read())
                {
                    rows.Add((reader.GetString(0), reader.GetString(1)));
                }

                Require(rows.Count);
            }));
        }

        Tell(output, $"queue of {Waiting} among {Cases} cases", ours, "the same query in a plain in-process table", theirs);
    }

    private static SqliteConnection Table(LiteDbPlanStore store, string file)
    {
        SqliteConnection table = new($"Data Source={file};Pooling=False");
        table.Open();
        using SqliteTransaction all = table.BeginTransaction();
        using SqliteCommand command = table.CreateCommand();
        command.CommandText = "create table cases (code text primary key, waiting text); create index queue on cases (waiting)";
        command.ExecuteNonQuery();
        foreach ((string code, string? waiting) in store.List(row => (row.CaseCode, row.Fields.GetValueOrDefault(CaseRow.Waiting))).Cases)
        {
            command.CommandText = "insert into cases values ($code, $waiting)";
            command.Parameters.Clear();
            command.Parameters.AddWithValue("$code", code);
            command.Parameters.AddWithValue("$waiting", (object?)waiting ?? DBNull.Value);
            command.ExecuteNonQuery();
        }

        all.Commit();
        return table;
    }

    private static RevisionRef Save(LiteDbPlanStore store, string code, RecordKind kind, RevisionRef? basis, string body) =>
        ((AppendResult.Saved)store.Append(new Submission(code, [new Draft(kind, basis, body)], new Actor("2001", "therapist-a"), DateTimeOffset.UnixEpoch))).Stamps[0].Reference;

    private static void Require(int count)
    {
        if (count != Waiting)
        {
            throw new InvalidOperationException($"The queue has {count} rows.");
        }
    }

    private static double Time(Action work)
    {
        Stopwatch watch = Stopwatch.StartNew();
        work();
        return watch.Elapsed.TotalMilliseconds;
    }

    private static void Tell(TextWriter output, string ours, List<double> our, string theirs, List<double> their)
    {
        double mine = our.Order().ElementAt(Rounds / 2);
        double other = their.Order().ElementAt(Rounds / 2);
        output.WriteLine(FormattableString.Invariant($"{ours}: {mine:F2} ms; {theirs}: {other:F2} ms; ratio {mine / other:F1} (medians of {Rounds}, in turn)"));
    }
}
