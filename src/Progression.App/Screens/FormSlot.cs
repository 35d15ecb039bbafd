using Progression.Core.People;
using Progression.Records.Caseload;

namespace Progression.App.Screens;

/// <summary>
/// Where one form that is open is kept while it is typed. Once it is closed, what an older state would still write is not written, so that a form that was
/// saved cannot come back.
/// </summary>
/// <param name="shelf">Where drafts lie.</param>
/// <param name="code">The case; null for a form that makes one.</param>
/// <param name="form">Which form.</param>
public sealed class FormSlot(DraftShelf shelf, CaseCode? code, string form)
{
    private readonly Lock _gate = new();
    private KeptForm? _onDisk;
    private bool _known;
    private bool _closed;

    /// <summary>Whether it takes no more.</summary>
    public bool IsClosed
    {
        get
        {
            lock (_gate)
            {
                return _closed;
            }
        }
    }

    /// <summary>Keeps what was typed so far; null when nothing was. Any thread.</summary>
    /// <returns>Null, or why it could not be kept.</returns>
    public string? Keep(KeptForm? typed)
    {
        lock (_gate)
        {
            return _closed ? null : Put(typed);
        }
    }

    /// <summary>Keeps what was typed at last, or drops it when null, and takes no more.</summary>
    /// <returns>Null, or why it could not be done.</returns>
    public string? Close(KeptForm? typed)
    {
        lock (_gate)
        {
            _closed = true;
            return Put(typed);
        }
    }

    private string? Put(KeptForm? typed)
    {
        if (_known && (typed is null ? _onDisk is null : typed.IsSame(_onDisk)))
        {
            return null;
        }

        string? problem = DraftDisk.Told(() => Write(typed));
        (_onDisk, _known) = problem is null ? (typed, true) : (_onDisk, false);
        return problem;
    }

    private void Write(KeptForm? typed)
    {
        if (typed is null)
        {
            shelf.Drop(code, form);
        }
        else
        {
            shelf.Keep(typed with { Code = code, Form = form });
        }
    }
}
