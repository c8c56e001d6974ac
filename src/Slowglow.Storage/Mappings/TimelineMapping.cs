using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using Slowglow.Workshop.Timeline;

namespace Slowglow.Storage.Mappings;

/// <summary>All kinds of entry share one table; a column serves every kind that has something of its sort to say.</summary>
internal sealed class TimelineMapping : IEntityTypeConfiguration<TimelineEntry>
{
    public void Configure(EntityTypeBuilder<TimelineEntry> builder)
    {
        builder.ToTable("timeline");
        builder.HasKey(e => new { e.JobNumber, e.Sequence });
        builder.Property(e => e.Sequence).ValueGeneratedNever();
        builder.Property(e => e.By).HasColumnName("written_by").HasMaxLength(80);
        builder.Ignore(e => e.IsEvidence);
        var kinds = builder
            .HasDiscriminator<string>("kind")
            .HasValue<BookedIn>("booked in")
            .HasValue<ComplaintChanged>("complaint changed")
            .HasValue<SetupDescribed>("setup described")
            .HasValue<SetupChosen>("setup chosen")
            .HasValue<ReadingTaken>("reading taken")
            .HasValue<ReadingWithdrawn>("reading withdrawn")
            .HasValue<StateChanged>("state changed")
            .HasValue<NoteWritten>("note written");
        Papers(kinds);
        Work(kinds);
        builder.Property("kind").HasMaxLength(40);
    }

    private static void Papers(DiscriminatorBuilder<string> kinds) =>
        kinds
            .HasValue<CallNoted>("call noted")
            .HasValue<QuoteGiven>("quote given")
            .HasValue<QuoteAnswered>("quote answered")
            .HasValue<LimitChanged>("limit changed")
            .HasValue<PromiseChanged>("promise changed")
            .HasValue<MoneyTaken>("money taken")
            .HasValue<MoneyReturned>("money returned")
            .HasValue<PaperIssued>("paper issued")
            .HasValue<ReportWritten>("report written")
            .HasValue<OwnerReminded>("owner reminded")
            .HasValue<EntryStruck>("entry struck out");

    private static void Work(DiscriminatorBuilder<string> kinds) =>
        kinds
            .HasValue<PartNeeded>("part needed")
            .HasValue<SuspectsNoted>("suspects noted")
            .HasValue<PartsOrdered>("parts ordered")
            .HasValue<OrderChased>("order chased")
            .HasValue<PartsArrived>("parts arrived")
            .HasValue<PartFitted>("part fitted")
            .HasValue<TimerStarted>("timer started")
            .HasValue<HoursWorked>("hours worked")
            .HasValue<SafetyTested>("safety tested")
            .HasValue<MarkedReady>("marked ready")
            .HasValue<HandedOver>("handed over")
            .HasValue<PhotoAdded>("photo added")
            .HasValue<SheetAttached>("sheet attached");
}
