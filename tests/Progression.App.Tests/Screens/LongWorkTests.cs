using System.Diagnostics;
using Progression.App.Actions;
using Progression.App.Grid;
using Progression.App.Pictures;
using Progression.App.Screens;
using Progression.App.Start;
using Progression.App.Stores;
using Progression.App.Tests.Stores;
using Progression.Core.Drafting;
using Progression.Core.People;
using Progression.Records.Storage;
using Progression.SeedDemo;

namespace Progression.App.Tests.Screens;

/// <summary>Something takes long while a screen stands: a real store whose index was spoiled, or whose lock somebody holds.</summary>
public sealed class LongWorkTests : IClassFixture<CrowdedStore>, IDisposable
{
    private const int Cases = CrowdedStore.Cases;
    private readonly TempStore _temp = new();
    private readonly SlowWatch _watch = new();
    private readonly OpenStore _store;
    private readonly ScreenStack _stack;
    private readonly WorkingScreens _screens;

    public LongWorkTests(CrowdedStore crowd)
    {
        crowd.CopyTo(_temp.Own);
        _store = _temp.Open(_temp.Own, progress: _watch);
        _stack = new(new ListFrame(new WorkbookOrder(_store, () => _store), new Farewells()).Open());
        _screens = new(_stack, _watch.Watch, patience: TimeSpan.Zero);
    }

    public void Dispose()
    {
        _watch.Release();
        _screens.Finish(TimeSpan.FromSeconds(10));
        _watch.Dispose();
        _temp.Dispose();
    }

    [Fact]
    public void Making_the_index_again_is_told_in_the_status_line_and_esc_gives_the_screen_back()
    {
        SpoilIndex();
        _watch.Hold();
        Keys("Ctrl+R");
        _watch.WaitUntilHeld();

        Assert.Matches(@"^Making the index again from the journal: \d+ %, Esc stops waiting\.", Foot(2));
        Assert.Equal("Esc stop", Foot(1));
        Keys("Esc");
        Assert.Equal("Stopping.", Foot(2));
        _watch.Release();
        Ended();

        Assert.Equal(WorkWatch.Stopped, Foot(2));
        Assert.Equal(Cases, List.Cases.Length);
        // What looks once a second for what others saved may report too, and is not asked to stop any more.
        _watch.Watch.Report(new WorkDone("looking", 1, 2));
        Keys("Ctrl+R");
        Ended();
        Assert.Equal("The list is as it is now.", Foot(2));
        Assert.Equal(Cases, List.Cases.Length);
    }

    [Fact]
    public void Keys_and_pastes_wait_for_the_end_and_are_then_done_in_their_order()
    {
        SpoilIndex();
        _watch.Hold();
        Keys("Ctrl+R");
        _watch.WaitUntilHeld();
        Keys("j", "/");
        _screens.Paste("crow");
        Keys("Tab", "j");
        Assert.Equal((0, StartMode.List, ""), (List.Index, List.Mode, List.Choice.Find));

        _watch.Release();
        Ended();

        Assert.Equal((StartMode.List, "crow"), (List.Mode, List.Choice.Find));
    }

    [Fact]
    public void What_was_typed_before_esc_is_not_done()
    {
        SpoilIndex();
        _watch.Hold();
        Keys("Ctrl+R");
        _watch.WaitUntilHeld();
        Keys("j", "q", "Esc");
        _watch.Release();
        Ended();

        Assert.Equal(0, List.Index);
        Assert.False(_screens.IsOver);
    }

    [Fact]
    public void A_save_that_was_stopped_can_be_asked_for_again_and_is_saved_once()
    {
        Open();
        CaseCode code = Plan.Plan.Code;
        Keys("g", "x");
        if (Plan.Mode == GridMode.Reason)
        {
            _screens.Paste("not wanted");
            Keys("Enter");
        }

        Ended();
        Assert.True(Plan.IsUnsaved);
        SpoilIndex();
        _watch.Hold();
        Keys("Ctrl+S");
        _watch.WaitUntilHeld();
        Keys("Esc");
        _watch.Release();
        Ended();
        Assert.Equal((true, WorkWatch.Stopped), (Plan.IsUnsaved, Plan.Status));

        Keys("Ctrl+S");
        Ended();

        Assert.Equal((false, "Saved."), (Plan.IsUnsaved, Plan.Status));
        Assert.Equal(2, _store.Book.Open(code)!.PlanStamp!.Revision);
    }

    [Fact]
    public void Waiting_for_another_process_names_it_and_can_be_stopped()
    {
        using (FileStream held = new(Path.Combine(_temp.Own, "plans.lock"), FileMode.Open, FileAccess.ReadWrite, FileShare.None))
        {
            Keys("Enter");
            WaitFor(() => Foot(2).StartsWith("Waiting for the store, in use by process ", StringComparison.Ordinal));
            Keys("Esc");
            Ended();
            Assert.Equal(WorkWatch.Stopped, Foot(2));
        }

        Open();
        Assert.Equal("", Plan.Status);
    }

    [Fact]
    public void A_window_made_larger_meanwhile_shows_the_same_screen_in_its_new_size()
    {
        SpoilIndex();
        _watch.Hold();
        Keys("Enter");
        _watch.WaitUntilHeld();

        Picture large = _screens.Draw(new PictureSize(200, 60));

        Assert.Equal(60, large.Rows.Length);
        Assert.StartsWith("Making the index again", large.Rows[^2].Text, StringComparison.Ordinal);
        Assert.StartsWith("Cases of", large.Rows[0].Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_session_that_ends_stops_the_work_and_the_store_is_whole()
    {
        SpoilIndex();
        _watch.Hold();
        Keys("Ctrl+R");
        _watch.WaitUntilHeld();
        _ = Task.Run(async () =>
        {
            await Task.Delay(100, TestContext.Current.CancellationToken);
            _watch.Release();
        }, TestContext.Current.CancellationToken);

        _screens.Finish(TimeSpan.FromSeconds(10));

        Assert.Equal(Cases, _temp.Open(_temp.Own).Book.List(row => row.CaseCode).Cases.Length);
    }

    private StartState List => ((Frame<StartState>)_stack.Top!).State;

    private GridState Plan => ((Frame<GridState>)_stack.Top!).State;

    private string Foot(int fromBelow) => _screens.Draw(PictureSize.Smallest).Rows[^fromBelow].Text.TrimEnd();

    private void SpoilIndex() => File.Delete(Path.Combine(_temp.Own, "plans.db"));

    private void Open()
    {
        Keys("Enter");
        Ended();
        Assert.IsType<Frame<GridState>>(_stack.Top);
    }

    private void Keys(params string[] keys)
    {
        foreach (string key in keys)
        {
            _screens.Press(key, key.Length == 1 ? key : null);
        }
    }

    private void Ended() => WaitFor(() => !_screens.IsAtWork);

    private void WaitFor(Func<bool> holds)
    {
        Stopwatch clock = Stopwatch.StartNew();
        while (!holds())
        {
            Assert.True(clock.Elapsed < TimeSpan.FromSeconds(60), Foot(2));
            Thread.Sleep(5);
            _screens.Look();
        }
    }
}

/// <summary>A store with enough entries that making its index again tells how far it is; made once, each test works on a copy.</summary>
public sealed class CrowdedStore : IDisposable
{
    /// <summary>How many cases it holds, each with a plan.</summary>
    public const int Cases = 60;

    private readonly TempStore _temp = new();

    /// <summary>Makes it.</summary>
    public CrowdedStore()
    {
        OpenStore store = _temp.Open(_temp.Own);
        foreach (Case patient in DemoCaseload.Crowd(Cases, store.Today, store.Library))
        {
            store.Book.Save(patient, PlanDraft.Draft(patient, store.Library).Value!, null);
        }
    }

    /// <summary>Copies it into a folder that is not there yet.</summary>
    public void CopyTo(string folder)
    {
        Directory.CreateDirectory(folder);
        foreach (string file in Directory.EnumerateFiles(_temp.Own))
        {
            File.Copy(file, Path.Combine(folder, Path.GetFileName(file)));
        }
    }

    /// <inheritdoc/>
    public void Dispose() => _temp.Dispose();
}

/// <summary>Makes a work slow where it reports, until it is let go.</summary>
internal sealed class SlowWatch : IProgress<WorkDone>, IDisposable
{
    private readonly ManualResetEventSlim _go = new(true);
    private readonly ManualResetEventSlim _held = new();

    public WorkWatch Watch { get; } = new();

    public void Dispose()
    {
        _go.Dispose();
        _held.Dispose();
    }

    public void Hold() => _go.Reset();

    public void Release() => _go.Set();

    public void WaitUntilHeld() => Assert.True(_held.Wait(TimeSpan.FromSeconds(60)));

    public void Report(WorkDone value)
    {
        Watch.Report(value);
        _held.Set();
        _go.Wait();
        Watch.Report(value);
    }
}
