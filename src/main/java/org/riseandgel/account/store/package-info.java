/** People, roles and cohorts as rows. Only the account feature comes here; others ask for views. */
package org.riseandgel.account.store;
