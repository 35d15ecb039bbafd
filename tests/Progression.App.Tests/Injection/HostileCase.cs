using System.Collections.Immutable;
using System.Text;
using Progression.App.Actions;
using Progression.App.Screens;
using Progression.App.Stores;
using Progression.App.Tests.Stores;
using Progression.Records.Caseload;

namespace Progression.App.Tests.Injection;

/// <summary>The demo's case with one text in every place that holds words of a person, and its screens.</summary>
internal sealed class HostileCase : IDisposable
{
    private readonly TempStore _temp = new();
    private readonly OpenedCase _clean;
    private readonly string _folder;

    public HostileCase()
    {
        _folder = _temp.Demo;
        OpenStore store = _temp.Open(_folder);
        Assert.True(DemoStore.Prepare(store, fresh: false).Ready);
        _clean = store.Book.Open(DemoStore.Showcase)!;
    }

    public void Dispose() => _temp.Dispose();

    /// <summary>Saves it with the text, by a person of that name, and gives the list with the plan over it.</summary>
    public OpenStore Saved(string text)
    {
        OpenStore store = _temp.Open(_folder, new("1001", Name(text)));
        OpenedCase now = store.Book.Open(DemoStore.Showcase)!;
        SaveResult result = store.Book.Save(HostileWords.Full(_clean.Case, text), HostileWords.Full(_clean.Plan!, text), now);
        Assert.True(result is SaveResult.Saved, $"{result}: {Uri.EscapeDataString(text)}");
        return store;
    }

    /// <summary>Has a session that is gone by now keep a form with the texts in it, and opens the store again.</summary>
    public OpenStore Kept(string[] texts)
    {
        OpenStore gone = _temp.Open(_folder, new("1001", string.Join(' ', texts)), ended: true);
        gone.Drafts.Opened().Keep(new KeptForm(DemoStore.Showcase, "session")
        {
            Fields = texts.Select((text, at) => (Line: at == 0 ? "note" : at == 1 ? "peak" : $"{at}{text}", text)).ToImmutableSortedDictionary(pair => pair.Line, pair => pair.text, StringComparer.Ordinal),
            At = texts[0],
        });
        return _temp.Open(_folder);
    }

    public static ScreenStack Screens(OpenStore store)
    {
        ListFrame list = new(new WorkbookOrder(store, () => store), new Farewells());
        return new(list.Open(), list.Plan(DemoStore.Showcase).Frame!);
    }

    // The store refuses a control character and half a pair in a name, and a name without end.
    private static string Name(string text)
    {
        string name = string.Concat(text.EnumerateRunes().Where(letter => !Rune.IsControl(letter) && letter != Rune.ReplacementChar)).Trim();
        return name.Length is 0 or > 200 ? "anna" : name;
    }
}
