using Progression.App.Actions;
using Progression.App.Caseload;

namespace Progression.App.Start;

/// <summary>Narrowing the list: by what is typed, by what is to be done, and its order.</summary>
public static class StartFind
{
    /// <summary>Begins to type, with what was looked for last.</summary>
    public static StartState Begin(StartState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        return state with { Mode = StartMode.Find, Finding = state.Finding.End(), Status = "" };
    }

    /// <summary>Goes back to the list; what was found stays.</summary>
    public static StartState Keep(StartState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        return state with { Mode = StartMode.List };
    }

    /// <summary>Shows all cases again.</summary>
    public static StartState Clear(StartState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        return (state with { Mode = StartMode.List, Finding = LineEntry.Empty }).With(state.Choice with { Filter = CaseFilter.All, Find = "" });
    }

    /// <summary>The state with the line changed and the cases found by it.</summary>
    public static StartState With(StartState state, Func<LineEntry, LineEntry> change)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(change);
        LineEntry line = change(state.Finding);
        return (state with { Finding = line }).With(state.Choice with { Find = line.Text.Trim() });
    }

    /// <summary>The next filter, or the one before.</summary>
    public static StartState Filter(StartState state, int by)
    {
        ArgumentNullException.ThrowIfNull(state);
        CaseChoice choice = state.Choice with { Filter = Next(state.Choice.Filter, by) };
        return state.With(choice) with { Status = choice.Filter == CaseFilter.All ? "All cases." : $"Only: {CaseWords.Of(choice.Filter)}." };
    }

    /// <summary>The next order, or the one before; the list begins at its top, which is what another order is asked for.</summary>
    public static StartState Order(StartState state, int by)
    {
        ArgumentNullException.ThrowIfNull(state);
        CaseChoice choice = state.Choice with { Order = Next(state.Choice.Order, by) };
        return state.With(choice).To(0) with { Status = $"Ordered by {CaseWords.Of(choice.Order)}." };
    }

    /// <summary>Typed or pasted text; null where none is looked for.</summary>
    public static StartState? Type(StartState state, string text)
    {
        ArgumentNullException.ThrowIfNull(state);
        return state.Mode == StartMode.Find ? With(state, line => line.Put(text)) : null;
    }

    private static T Next<T>(T now, int by)
        where T : struct, Enum
    {
        T[] all = Enum.GetValues<T>();
        return all[(Array.IndexOf(all, now) + by + all.Length) % all.Length];
    }
}
