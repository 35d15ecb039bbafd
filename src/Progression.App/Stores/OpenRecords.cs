using Progression.Core.Clinic;
using Progression.Records.Audit;
using Progression.Records.Caseload;
using Progression.Records.Clinic;
using Progression.Records.Storage;

namespace Progression.App.Stores;

/// <summary>A folder of records that may be opened, and who works on it.</summary>
public sealed class OpenRecords
{
    private readonly ClinicAccess _access;
    private readonly TimeProvider _clock;

    /// <summary>Puts together what belongs to one folder and one person.</summary>
    /// <param name="access">Who works; good.</param>
    /// <param name="store">Where the records are.</param>
    /// <param name="clock">The clock that dates what is written.</param>
    public OpenRecords(ClinicAccess access, IPlanStore store, TimeProvider clock)
    {
        ArgumentNullException.ThrowIfNull(access);
        (_access, _clock, Store) = (access, clock, store);
        Person = access.Person ?? throw new ArgumentException("Nobody works on it.", nameof(access));
        Trail = new AuditTrail(store, Person, clock);
        Book = new CaseBook(store, Person, clock);
    }

    /// <summary>Where the records are.</summary>
    public IPlanStore Store { get; }

    /// <summary>Who works.</summary>
    public ClinicPerson Person { get; }

    /// <summary>What the clinic has set; null for the records of one person.</summary>
    public ClinicSettings? Clinic => _access.Clinic;

    /// <summary>Writes down what the person does.</summary>
    public AuditTrail Trail { get; }

    /// <summary>The cases and plans.</summary>
    public CaseBook Book { get; }

    /// <summary>The person's unsaved work.</summary>
    public DraftShelf Drafts => new(_access.Folder, DraftSession.Current(Book.By), _clock);

    /// <summary>Where the person's own settings are; null for the usual place, their home. Where many work as one account it is beside the records.</summary>
    public string? Settings => Clinic?.Accounts == ClinicAccounts.Sudo ? Path.Combine(_access.Folder, "settings", $"{Person.UserId}.yaml") : null;
}
