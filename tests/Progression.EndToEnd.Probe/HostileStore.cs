using Progression.App.Stores;
using Progression.App.Tests.Injection;
using Progression.Core.Clinic;
using Progression.Records.Caseload;
using Progression.Records.Library;
using Progression.Records.Storage;

namespace Progression.EndToEnd.Probe;

/// <summary>The demo's caseload with everything in its first case that would do something to a terminal.</summary>
internal static class HostileStore
{
    private const int Longest = 60;

    /// <summary>Makes it in a folder that is not there yet.</summary>
    public static void Make(string folder)
    {
        ClinicPerson person = ClinicPerson.Alone("1001", "anna");
        CaseBook book = new(new LiteDbPlanStore(new StoreOptions(folder, CaseSummary.Of)), person, TimeProvider.System);
        OpenStore store = new()
        {
            Folder = folder,
            Book = book,
            Drafts = new DraftShelf(folder, DraftSession.Current(new Actor(person.UserId, person.Name)), TimeProvider.System),
            Library = LibraryReader.Default(),
            Clock = TimeProvider.System,
        };
        if (!DemoStore.Prepare(store, fresh: false).Ready || book.Open(DemoStore.Showcase) is not { Plan: { } plan } clean)
        {
            throw new InvalidOperationException("The demo could not be made.");
        }

        string text = string.Join(' ', HostileText.All.Select(one => one[..Math.Min(one.Length, Longest)]));
        SaveResult saved = book.Save(HostileWords.Full(clean.Case, text), HostileWords.Full(plan, text), clean);
        if (saved is not SaveResult.Saved)
        {
            throw new InvalidOperationException($"{saved}");
        }
    }
}
