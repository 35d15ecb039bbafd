using Progression.App.Caseload;
using Progression.App.Start;
using Progression.App.Stores;
using Progression.App.Tests.Stores;

namespace Progression.App.Tests.Start;

/// <summary>Two start screens: of an empty store, and of the demo's.</summary>
internal static class SampleStart
{
    public static StartState Empty { get; } = new()
    {
        Folder = "/srv/progression",
        Now = new DateTimeOffset(2026, 11, 25, 9, 0, 0, TimeSpan.Zero),
        Today = new DateOnly(2026, 11, 25),
        Cases = [],
    };

    /// <summary>The demo's list as it is read from a real store, two hours after it was made.</summary>
    public static StartState Demo { get; } = OfStore();

    private static StartState OfStore()
    {
        using TempStore temp = new();
        OpenStore store = temp.Open(temp.Demo);
        Assert.True(DemoStore.Prepare(store, fresh: false).Ready);
        return Empty with
        {
            IsDemo = true,
            Now = temp.Clock.Now.AddHours(2),
            Cases = CaseListing.Read(store).Cases,
        };
    }
}
