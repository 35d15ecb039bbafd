using Progression.App.Shell;
using Terminal.Gui.App;
using Terminal.Gui.Drivers;

namespace Progression.App.Tests.Shell;

/// <summary>What it does on a terminal is shown by the terminal suite and measured by the terminal bench.</summary>
public sealed class WokenLoopTests
{
    /// <summary>The library has no door for another keyboard; a new version of it may have moved the place where one can be put.</summary>
    [Fact]
    public void The_library_takes_our_keyboard()
    {
        ushort usual = Application.MaximumIterationsPerSecond;
        try
        {
            using IApplication application = Application.Create();
            using WokenLoop loop = WokenLoop.TakeOver(application);
            application.Init(DriverRegistry.Names.ANSI);
            Assert.IsType<WokenInput>(Assert.IsType<AnsiInputProcessor>(application.Driver!.GetInputProcessor(), exactMatch: false).InputImpl);
        }
        finally
        {
            Application.MaximumIterationsPerSecond = usual;
        }
    }
}
