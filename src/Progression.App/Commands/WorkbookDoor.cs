using System.Collections.Concurrent;
using Progression.App.Stores;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Records.Settings;
using Progression.Records.Storage;
using Progression.Records.Yaml;

namespace Progression.App.Commands;

/// <summary>Opens the workbook for the commands that end in it.</summary>
internal sealed class WorkbookDoor(CliEnvironment environment, CommandOutput output, StorePlace stores)
{
    private readonly ConcurrentQueue<string> _notices = [];
    private readonly ProgressLines _progress = new(output, environment.Clock);

    /// <summary>Whether there is a terminal and a workbook for it.</summary>
    public bool IsThere => environment is { HasTerminal: true, OpenWorkbook: not null };

    /// <summary>Whether line mode should be opened where the workbook was asked for.</summary>
    public bool IsDumb => environment is { IsDumb: true, OpenPlain: not null };

    /// <summary>A store as the workbook works on it. What it notices is told when the workbook is closed.</summary>
    /// <exception cref="StoreException">Refused: it is not safe to open it.</exception>
    public OpenStore Store(string folder, ClinicalLibrary library, bool demo = false)
    {
        OpenRecords records = stores.Records(folder, Hear, _progress);
        return new OpenStore
        {
            Folder = Path.GetFullPath(folder),
            Book = records.Book,
            Drafts = records.Drafts,
            Settings = records.Settings,
            Clinic = records.Clinic,
            Columns = stores.Columns(records),
            Library = library,
            Clock = environment.Clock,
            Progress = _progress,
            IsDemo = demo,
        };
    }

    /// <summary>The workbook on a store.</summary>
    /// <param name="store">The store.</param>
    /// <param name="code">The case to open first; null for the list of cases.</param>
    /// <param name="onlyThat">Whether to end when that plan is left.</param>
    public int Open(OpenStore store, CaseCode? code = null, bool onlyThat = false) => Open(environment.OpenWorkbook!, store, code, onlyThat);

    /// <summary>The workbook on a store in line mode.</summary>
    /// <param name="store">The store.</param>
    /// <param name="code">The case to open, which ends with it; null for the list of cases.</param>
    public int OpenPlain(OpenStore store, CaseCode? code = null) => Open(environment.OpenPlain!, store, code, onlyThat: code is not null);

    private int Open(Func<WorkbookOrder, int> open, OpenStore store, CaseCode? code, bool onlyThat)
    {
        SettingsKeeper settings = new(new SettingsFile(store.Settings ?? Path.Combine(environment.ConfigHome, "progression", "settings.yaml")));
        foreach (FileProblem problem in settings.Problems)
        {
            _notices.Enqueue($"{problem} The usual settings held.");
        }

        try
        {
            bool plain = settings.Current.LineMode && environment.OpenPlain is not null;
            return (plain ? environment.OpenPlain! : open)(new WorkbookOrder(store, () => Store(stores.DemoFolder, store.Library, demo: true))
            {
                Code = code,
                Settings = settings,
                OnlyThat = onlyThat,
                Shown = screen => _progress.Screen = screen,
            });
        }
        finally
        {
            _progress.Screen = null;
            TellNotices();
        }
    }

    /// <summary>Tells what the stores noticed so far.</summary>
    public void TellNotices()
    {
        while (_notices.TryDequeue(out string? notice))
        {
            output.Message($"progression: {notice}");
        }
    }

    private void Hear(StoreNotice notice) => _notices.Enqueue(notice.Text);
}
