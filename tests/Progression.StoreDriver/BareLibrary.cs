using LiteDB;
using LiteDB.Engine;

/// <summary>The database library as it comes, without a lock of ours: counts in one document, each time in a database opened anew.</summary>
internal static class BareLibrary
{
    public static int Count(string file, int count)
    {
        Console.WriteLine("ready");
        Console.ReadLine();
        (int done, int failed) = (0, 0);
        while (done < count && failed < count)
        {
            try
            {
                using FileStream data = new(file, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.ReadWrite | FileShare.Delete);
                using FileStream log = new(file + "-log", FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.ReadWrite | FileShare.Delete);
                using LiteDatabase database = new(new LiteEngine(new EngineSettings { DataStream = data, LogStream = log }), new BsonMapper());
                ILiteCollection<BsonDocument> counters = database.GetCollection("counters");
                int now = counters.FindById("n")?["value"].AsInt32 ?? 0;
                counters.Upsert(new BsonDocument { ["_id"] = "n", ["value"] = now + 1 });
                database.Checkpoint();
                done++;
            }
            catch (Exception error) when (error is LiteException or IOException or InvalidCastException or NullReferenceException or ArgumentException or InvalidOperationException)
            {
                failed++; // It said so, and whoever used it would try again.
            }
        }

        Console.WriteLine(done);
        return 0;
    }

    public static int Tell(string file)
    {
        using LiteDatabase database = new(file);
        Console.WriteLine(database.GetCollection("counters").FindById("n")["value"].AsInt32);
        return 0;
    }
}
