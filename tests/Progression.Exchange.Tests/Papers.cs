using Progression.Core.Documents;
using Progression.Core.Drafting;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Plans;
using Progression.Core.Sheets;
using Progression.Records.Cases;
using Progression.Records.Library;
using Progression.Records.Words;

namespace Progression.Exchange.Tests;

/// <summary>Papers of the example case that comes with the program.</summary>
internal static class Papers
{
    internal static ClinicalLibrary Library { get; } = LibraryReader.Default();

    internal static HomeWords English { get; } = HomeWordsReader.English();

    internal static Case Example { get; } = CaseFileReader.Read(Path.Combine(Root(), "shared", "examples", "case.yaml"), Library, new DateOnly(2026, 3, 20)).Case!;

    internal static PlanRevision Plan { get; } = PlanDraft.Draft(Example, Library, null).Value!;

    internal static Document Sheet(int week, bool isSigned = false) => HomeSheet.Of(
        new HomeSheetOrder
        {
            Patient = Example,
            Plan = Plan,
            Library = Library,
            Words = English,
            Mark = isSigned ? English.Text("labels.signed", ("name", "sue"), ("day", "2026-03-07"), ("revision", "1")) : English.Text("labels.unsigned"),
            IsSigned = isSigned,
            Clinic = "Knee clinic, second floor",
            Contact = "the clinic, ext. 12",
        },
        week);

    private static string Root()
    {
        DirectoryInfo folder = new(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "Progression.sln")))
        {
            folder = folder.Parent ?? throw new DirectoryNotFoundException("The tests run inside the checkout.");
        }

        return folder.FullName;
    }
}
