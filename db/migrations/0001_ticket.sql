CREATE TABLE `claims` (
	`id` text PRIMARY KEY NOT NULL,
	`instrument_id` text NOT NULL,
	`job_id` text,
	`kind` text NOT NULL,
	`subject` text,
	`value` text NOT NULL,
	`basis` text NOT NULL,
	`evidence` text,
	`moment` text,
	`reading_id` text,
	`sure` text NOT NULL,
	`created_at` integer NOT NULL,
	FOREIGN KEY (`instrument_id`) REFERENCES `instruments`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`job_id`) REFERENCES `jobs`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE INDEX `claims_instrument` ON `claims` (`instrument_id`);--> statement-breakpoint
CREATE INDEX `claims_job` ON `claims` (`job_id`);--> statement-breakpoint
CREATE TABLE `kept_tickets` (
	`job_id` text PRIMARY KEY NOT NULL,
	`ticket` text NOT NULL,
	`findable` text NOT NULL,
	FOREIGN KEY (`job_id`) REFERENCES `jobs`(`id`) ON UPDATE no action ON DELETE cascade
);
--> statement-breakpoint
CREATE TABLE `parts` (
	`id` text PRIMARY KEY NOT NULL,
	`job_id` text NOT NULL,
	`what` text NOT NULL,
	`deed` text NOT NULL,
	`source` text,
	`fate` text,
	`doubt` text,
	`doubt_basis` text,
	`evidence` text,
	`moment` text,
	`created_at` integer NOT NULL,
	FOREIGN KEY (`job_id`) REFERENCES `jobs`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE INDEX `parts_job` ON `parts` (`job_id`,`created_at`);--> statement-breakpoint
CREATE TABLE `work_items` (
	`id` text PRIMARY KEY NOT NULL,
	`job_id` text NOT NULL,
	`what` text NOT NULL,
	`origin` text NOT NULL,
	`charge` text,
	`price_minor` integer,
	`currency` text,
	`outcome` text NOT NULL,
	`why` text,
	`begun` text,
	`ended` text,
	`created_at` integer NOT NULL,
	FOREIGN KEY (`job_id`) REFERENCES `jobs`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE INDEX `work_items_job` ON `work_items` (`job_id`,`created_at`);--> statement-breakpoint
ALTER TABLE `clients` ADD `reach` text;--> statement-breakpoint
ALTER TABLE `clients` ADD `notes` text;--> statement-breakpoint
ALTER TABLE `instruments` ADD `features` text;--> statement-breakpoint
ALTER TABLE `instruments` ADD `client_id` text REFERENCES clients(id);--> statement-breakpoint
CREATE INDEX `instruments_client` ON `instruments` (`client_id`);--> statement-breakpoint
ALTER TABLE `jobs` ADD `state` text DEFAULT 'booked in' NOT NULL;--> statement-breakpoint
ALTER TABLE `jobs` ADD `received_on` text;--> statement-breakpoint
ALTER TABLE `jobs` ADD `promised_on` text;--> statement-breakpoint
ALTER TABLE `jobs` ADD `collected_on` text;--> statement-breakpoint
ALTER TABLE `jobs` ADD `place` text;--> statement-breakpoint
ALTER TABLE `jobs` ADD `came_with` text DEFAULT '[]' NOT NULL;--> statement-breakpoint
ALTER TABLE `jobs` ADD `ready_look` text;--> statement-breakpoint
CREATE INDEX `jobs_client` ON `jobs` (`client_id`);--> statement-breakpoint
CREATE INDEX `jobs_instrument` ON `jobs` (`instrument_id`);