using Progression.Core.Clinic;
using Progression.Records.Audit;
using Progression.Records.Storage;

namespace Progression.App.Commands.Records;

/// <summary>The records as a whole, with who works on them.</summary>
/// <param name="Folder">Their folder.</param>
/// <param name="Store">The store.</param>
/// <param name="Person">Who works.</param>
/// <param name="Clock">The clock that dates what is written.</param>
/// <param name="Progress">Hears how far a long work is.</param>
internal sealed record RecordsAtHand(string Folder, LiteDbPlanStore Store, ClinicPerson Person, TimeProvider Clock, IProgress<WorkDone> Progress)
{
    /// <summary>Where what is done is written down.</summary>
    public AuditTrail Trail { get; } = new(Store, Person, Clock);

    /// <summary>Why what was done could not be written down; null when it was.</summary>
    public string? Unnoted { get; private set; }

    /// <summary>Who works, as entries name them.</summary>
    public Actor By => new(Person.UserId, Person.Name);

    /// <summary>Writes down what was done.</summary>
    public void Note(AuditAct act, string what) => Unnoted = Trail.Note(new AuditNote(act, null, What: what));
}
