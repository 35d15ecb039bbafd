namespace Progression.App.Shell;

/// <summary>
/// Follows what is typed and tells whether a paste is open. On a bad line its end may never come; whoever waits for it would take every key for pasted text.
/// </summary>
internal sealed class PasteWatch
{
    /// <summary>What a terminal sends after a paste (bracketed paste, as terminals commonly do it).</summary>
    public const string End = "\e[201~";

    private const string Start = "\e[200~";
    private string _last = "";

    /// <summary>Whether a paste has begun and not ended.</summary>
    public bool IsOpen { get; private set; }

    /// <summary>Takes what was typed; a sequence may come in pieces.</summary>
    public void See(ReadOnlySpan<char> typed)
    {
        foreach (char letter in typed)
        {
            _last = letter == Start[0] ? $"{letter}" : _last.Length is > 0 and < 6 ? _last + letter : "";
            IsOpen = _last == Start || (_last != End && IsOpen);
        }
    }

    /// <summary>The paste was given up.</summary>
    public void GiveUp() => (IsOpen, _last) = (false, "");
}
