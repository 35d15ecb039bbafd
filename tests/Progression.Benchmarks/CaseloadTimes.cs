using System.Diagnostics;
using Progression.App.Caseload;
using Progression.App.Start;
using Progression.App.Stores;
using Progression.Core.Caseload;
using Progression.Core.Clinic;
using Progression.Records.Caseload;
using Progression.Records.Storage;

namespace Progression.Benchmarks;

/// <summary>What a person waits for in the list of a large caseload: the first reading in a fresh process, then the median of several.</summary>
internal static class CaseloadTimes
{
    private const int Rounds = 9;

    public static void Print(string folder, TextWriter output)
    {
        OpenStore store = Store(folder);
        CaseListing first = new(0, store.Today, [], null);
        Tell("read and judge, first time", () => first = CaseListing.Read(store), 1);
        Tell("read and judge", () => _ = CaseListing.Read(store), Rounds);
        Tell("read rows alone", () => _ = store.Book.List(row => row.CaseCode.Length), Rounds);
        Tell("read facts", () => Facts(store), Rounds);
        CaseFacts[] facts = [.. Facts(store)];
        Tell("judge facts", () => Judge(store, facts), Rounds);
        Tell("ask whether somebody saved", () => _ = first.Now(store), Rounds);
        foreach (CaseOrder order in Enum.GetValues<CaseOrder>())
        {
            Tell($"order by {CaseWords.Of(order)}", () => _ = new CaseChoice { Order = order }.Ordered(first.Cases), Rounds);
        }

        StartState list = new() { Folder = folder, Now = store.Clock.GetUtcNow(), Today = first.Today, Cases = first.Cases };
        _ = list.Shown;
        StartState finding = StartScreen.Definition.Press(list, "/").State;
        Tell("a letter in the find line, with its picture", () => Draw(StartScreen.Definition.Press(finding, "9", "9").State), Rounds);
        Tell("the picture", () => Draw(list), Rounds);
        Tell("the cursor down, with its picture", () => Draw(StartScreen.Definition.Press(list, "Down").State), Rounds);
        output.WriteLine($"{first.Cases.Length} cases: " + string.Join(", ", Enum.GetValues<CaseMark>().Select(mark => $"{first.Cases.Count(line => line.Has(mark))} {mark.ToString().ToLowerInvariant()}")));

        void Tell(string what, Action work, int rounds)
        {
            List<double> times = [];
            for (int round = 0; round < rounds; round++)
            {
                Stopwatch watch = Stopwatch.StartNew();
                work();
                times.Add(watch.Elapsed.TotalMilliseconds);
            }

            output.WriteLine(FormattableString.Invariant($"{what,-46}{times.Order().ElementAt(rounds / 2),10:F2} ms"));
        }
    }

    private static IEnumerable<CaseFacts> Facts(OpenStore store)
    {
        CaseFactsReader reader = new();
        return store.Book.List(reader.Of).Cases.OfType<CaseFacts>();
    }

    private static void Judge(OpenStore store, CaseFacts[] facts)
    {
        CaseStandings judge = new(store.Library, store.Today);
        foreach (CaseFacts one in facts)
        {
            _ = judge.Of(one);
        }
    }

    private static void Draw(StartState state) => StartScreen.Definition.Draw(state, new(80, 24));

    private static OpenStore Store(string folder)
    {
        CaseBook book = new(new LiteDbPlanStore(new StoreOptions(folder, CaseSummary.Of)), ClinicPerson.Alone("2001", "therapist-a"), TimeProvider.System);
        return new OpenStore { Folder = folder, Book = book, Drafts = new DraftShelf(folder, DraftSession.Current(book.By), TimeProvider.System), Library = SampleCase.Library, Clock = TimeProvider.System };
    }
}
